import type { Colour } from '#core/diagram';
import type { Paint } from './primitives.ts';

/** A colour for every paint, as "#rrggbb". */
export type Palette = Readonly<Record<Paint, string>>;

/** Insulation looks the same in any light; what makes it stand out is the casing drawn under it. */
const INSULATION: Readonly<Record<`conductor:${Exclude<Colour, 'auto'>}`, string>> = {
	'conductor:red': '#c8322b',
	'conductor:black': '#26282b',
	'conductor:yellow': '#e8b91e',
	'conductor:green': '#2f8a4e',
	'conductor:green-yellow': '#58a83e',
	'conductor:brown': '#7d5233',
	'conductor:blue': '#2f6fbf',
	'conductor:grey': '#8b9096',
	'conductor:white': '#f7f6f2',
	'conductor:orange': '#e07b25',
	'conductor:violet': '#7a56ad',
	'conductor:pink': '#e58fa8',
	'conductor:tan': '#c9a675'
};

export const PALETTES = {
	light: {
		...INSULATION,
		paper: '#f5efe3',
		ink: '#2a2620',
		muted: '#5f574b',
		faint: '#e2d8c5',
		case: '#fdfaf3',
		'case-raised': '#f1e9da',
		'case-edge': '#74695a',
		metal: '#d8b878',
		'metal-dark': '#7d6a45',
		fuse: '#cfe3ee',
		positive: '#b3261e',
		negative: '#1f4f8f',
		chassis: '#2e6b3d',
		selection: '#17616a',
		accent: '#17616a',
		error: '#b3261e',
		warning: '#9a5b00',
		note: '#31598f',
		ok: '#2e6b3d'
	},
	dark: {
		...INSULATION,
		// Darker than the paper, so that the casing shows as an outline on both sides.
		'conductor:black': '#0a0c0e',
		paper: '#1b2126',
		ink: '#ebe6dc',
		muted: '#aab2b5',
		faint: '#2c353c',
		case: '#283037',
		'case-raised': '#323c44',
		'case-edge': '#85919a',
		metal: '#b9985a',
		'metal-dark': '#e3cb98',
		fuse: '#3f5d70',
		positive: '#ff8a80',
		negative: '#8ab8f5',
		chassis: '#86cf98',
		selection: '#72c4c0',
		accent: '#72c4c0',
		error: '#ff8a80',
		warning: '#f0b45a',
		note: '#9cc3f5',
		ok: '#86cf98'
	},
	/** For print: white ground, everything else as in daylight. */
	paper: {
		...INSULATION,
		paper: '#ffffff',
		ink: '#17191c',
		muted: '#50555c',
		faint: '#d9d9d9',
		case: '#ffffff',
		'case-raised': '#f1f1ef',
		'case-edge': '#5c5c5c',
		metal: '#dfc694',
		'metal-dark': '#6f5f3f',
		fuse: '#dbe9f1',
		positive: '#a3201a',
		negative: '#1b457d',
		chassis: '#285d35',
		selection: '#17616a',
		accent: '#17616a',
		error: '#a3201a',
		warning: '#8a5200',
		note: '#2b4f80',
		ok: '#285d35'
	}
} as const satisfies Record<string, Palette>;

export type ThemeName = keyof typeof PALETTES;
