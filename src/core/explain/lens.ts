/** Figures of a check put into five bands, for a drawing coloured by one of them. */
import type { CheckResult, ConductorFigures } from '#core/check';
import type { Conductor, ConductorId, Diagram, StudKey } from '#core/diagram';
import type { Pole } from '#core/network';
import { ampsText, kelvinText, percentText, voltsText } from '#core/units';
import { BAND_LOOKS, type BandIndex, type BandLook } from './lens-bands.ts';

export const LENSES = ['polarity', 'loading', 'volts-lost', 'protection', 'fault-current', 'temperature-rise'] as const;
export type LensId = (typeof LENSES)[number];

export interface LensValue {
	/** In the lens's unit; Infinity where nothing limits it. */
	readonly value: number;
	readonly unit: string;
	readonly text: string;
	readonly band: BandIndex;
}

export interface LensBand extends BandLook {
	readonly band: BandIndex;
	/** From this value up to, not including, the next band's. */
	readonly from: number;
	/** Infinity in the last band. */
	readonly to: number;
	/** "25 to 50 %". */
	readonly limits: string;
	/** Why it begins there. */
	readonly source: string;
	readonly words: string;
}

export interface LensView {
	readonly lens: LensId;
	readonly title: string;
	/** What is shown, and of what it is a share. */
	readonly about: string;
	readonly unit: string;
	/** In ascending order. Polarity has four, the others five. */
	readonly legend: readonly LensBand[];
	/** Null: the lens says nothing of it, and why is in `about`. */
	readonly conductors: Readonly<Record<ConductorId, LensValue | null>>;
	readonly studs: Readonly<Record<StudKey, LensValue | null>>;
}

interface Lens {
	readonly title: string;
	readonly about: string;
	readonly unit: string;
	/** Lower limits of bands 1 to 4. */
	limits(diagram: Diagram): readonly [number, number, number, number];
	readonly words: readonly [string, string, string, string, string];
	/** Of each limit. */
	readonly sources: readonly [string, string, string, string];
	text(value: number): string;
	conductor(figures: ConductorFigures, conductor: Conductor): number | null;
	stud(check: CheckResult, key: StudKey): number | null;
}

/** Steps for the eye. */
const HABIT = 'chosen for the eye: no rule stands behind it';

const none = (): null => null;
const percentOf = (value: number, of: number): number => (value === 0 ? 0 : (100 * value) / of);
const wholePercent = (value: number): string => (value === Infinity ? 'unlimited' : percentText(value));

const MEASURED: Readonly<Record<Exclude<LensId, 'polarity'>, Lens>> = {
	loading: {
		title: 'Loading',
		about: 'Current in the worst continuous case, as a share of the amperage. Starter supplies and studs have none.',
		unit: '%',
		limits: () => [25, 50, 80, 100],
		words: ['idle', 'light', 'ordinary', 'near its limit', 'over its amperage'],
		sources: [HABIT, HABIT, 'common practice, no source: 80 % for what runs for hours', 'the amperage itself'],
		text: percentText,
		conductor: ({ continuousA, ampacityA, isCranking }) => (isCranking ? null : percentOf(continuousA, ampacityA)),
		stud: none
	},
	'volts-lost': {
		title: 'Volts lost',
		about:
			'Along each conductor in its worst continuous case, lugs included; at each stud, how far it is from the supply of its pole. Limits are 0.25, 1, 3 and 5 % of the nominal voltage.',
		unit: 'mV',
		limits: ({ system: { nominalV } }) => [2.5 * nominalV, 10 * nominalV, 30 * nominalV, 50 * nominalV],
		words: ['hardly any', 'little', 'noticeable', 'more than a critical circuit may lose', 'a lamp dims'],
		sources: [
			HABIT,
			HABIT,
			'ABYC E-11: 3 % for critical circuits',
			'common practice, no source: half of the 10 % for ordinary circuits of ABYC E-11'
		],
		text: (value) => voltsText(value / 1000),
		conductor: ({ dropV }) => 1000 * dropV,
		stud: ({ studLostV }, key) => (Object.hasOwn(studLostV, key) ? 1000 * studLostV[key]!.volts : null)
	},
	protection: {
		title: 'Protection',
		about: 'Let-through as a share of the greatest device allowed. Returns and starter supplies have none, nor have studs.',
		unit: '%',
		limits: () => [50, 80, 100 + 1e-4, 150],
		words: ['far below the limit', 'below the limit', 'up to the limit', 'over the limit', 'far over, or unprotected'],
		sources: [HABIT, HABIT, 'the greatest device the profile allows', HABIT],
		text: wholePercent,
		conductor: ({ letThroughA, greatestDeviceA, pole, isCranking }) =>
			pole === 'negative' || isCranking ? null : percentOf(letThroughA, greatestDeviceA),
		stud: none
	},
	'fault-current': {
		title: 'Fault current',
		about:
			'Into a dead short to the return beside it, batteries full; of a conductor, at its worse end. Returns have none. Limits are what blade (1 kA) and strip fuses (2 kA) of ISO 8820 can break, and half and 2.5 times those.',
		unit: 'A',
		limits: () => [500, 1000, 2000, 5000],
		words: ['low', 'a blade fuse breaks it', 'a strip fuse breaks it', 'beyond a strip fuse', 'needs high breaking capacity'],
		sources: [
			'half of what a blade fuse breaks',
			'ISO 8820-3: a blade fuse breaks 1 kA at 32 V',
			'ISO 8820-5: a strip fuse breaks 2 kA at 32 V',
			'2.5 times what a strip fuse breaks'
		],
		text: ampsText,
		conductor: ({ faultA }) => faultA,
		stud: ({ studFaultA }, key) => (Object.hasOwn(studFaultA, key) ? studFaultA[key]! : null)
	},
	'temperature-rise': {
		title: 'Temperature rise',
		about:
			'Estimated rise above what is around it, in the worst continuous case. Starter supplies run for seconds only and have none, nor have studs.',
		unit: 'K',
		limits: () => [5, 15, 30, 50],
		words: ['cool', 'warm', 'hot', 'too hot to hold', 'insulation suffers'],
		sources: [HABIT, HABIT, HABIT, HABIT],
		text: (value) => kelvinText(value),
		conductor: ({ workingC, ambientC, isCranking }) => (isCranking ? null : workingC - ambientC),
		stud: none
	}
};

/** The drawing through a lens. Plain data, from a check and the diagram it is of. */
export const lensValues = (diagram: Diagram, check: CheckResult, lens: LensId): LensView =>
	lens === 'polarity' ? polarity(check) : measured(diagram, check, lens);

function measured(diagram: Diagram, check: CheckResult, id: Exclude<LensId, 'polarity'>): LensView {
	const lens = MEASURED[id];
	const limits = lens.limits(diagram);
	const valueOf = (value: number | null): LensValue | null =>
		value === null || Number.isNaN(value) ? null : { value, unit: lens.unit, text: lens.text(value), band: bandOf(value, limits) };
	const edges = [0, ...limits, Infinity];
	return {
		lens: id,
		title: lens.title,
		about: lens.about,
		unit: lens.unit,
		legend: BAND_LOOKS.map((look, band) => ({
			...look,
			band: band as BandIndex,
			from: edges[band]!,
			to: edges[band + 1]!,
			limits: limitsText(lens, edges[band]!, edges[band + 1]!),
			source: band === 0 ? '' : lens.sources[band - 1]!,
			words: lens.words[band]!
		})),
		conductors: mapRecord(check.conductors, (figures, key) => {
			const conductor = Object.hasOwn(diagram.conductors, key) ? diagram.conductors[key]! : null;
			return conductor && valueOf(lens.conductor(figures, conductor));
		}),
		studs: mapRecord(check.studPole, (_, key) => valueOf(lens.stud(check, key)))
	};
}

const bandOf = (value: number, limits: readonly number[]): BandIndex => limits.filter((limit) => value >= limit).length as BandIndex;

function limitsText({ text }: Lens, from: number, to: number): string {
	if (from === 0) return `below ${text(to)}`;
	return to === Infinity ? `${text(from)} and more` : `${text(from)} to ${text(to)}`;
}

/** Poles take the bands that differ most: negative, none, positive, and shorted, which must be seen at once. */
const POLES: Readonly<Record<Pole, { readonly band: BandIndex; readonly limits: string; readonly words: string }>> = {
	negative: { band: 0, limits: '−', words: 'negative' },
	floating: { band: 1, limits: 'none', words: 'on no battery or source' },
	positive: { band: 3, limits: '+', words: 'positive, with the midpoints of strings' },
	shorted: { band: 4, limits: '+ and −', words: 'reaches both terminals of one source' }
};

function polarity(check: CheckResult): LensView {
	const valueOf = (pole: Pole): LensValue => ({ value: POLES[pole].band, unit: '', text: POLES[pole].words, band: POLES[pole].band });
	return {
		lens: 'polarity',
		title: 'Polarity',
		about: 'Which pole each conductor and stud belongs to with every switch closed.',
		unit: '',
		legend: Object.values(POLES).map(({ band, limits, words }) => ({
			...BAND_LOOKS[band],
			band,
			from: band,
			to: band + 1,
			limits,
			words,
			source: ''
		})),
		conductors: mapRecord(check.conductors, ({ pole }) => valueOf(pole)),
		studs: mapRecord(check.studPole, valueOf)
	};
}

const mapRecord = <From, To>(record: Readonly<Record<string, From>>, to: (value: From, key: string) => To): Record<string, To> =>
	Object.fromEntries(Object.entries(record).map(([key, value]) => [key, to(value, key)]));
