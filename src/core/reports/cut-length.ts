/** How long to cut a conductor. Allowances are common practice, no source. */
import { areaMm2 } from '#core/conductors';
import type { Conductor } from '#core/diagram';

/** From here on a conductor is a battery or inverter cable: 6 AWG, 16 mm². */
const HEAVY_FROM_MM2 = 13;

const HEAVY = { share: 0.03, leastM: 0.03, text: '3 %, at least 30 mm' };
const LIGHT = { share: 0.1, leastM: 0.15, text: '10 %, at least 150 mm' };
/** A service loop, so that a panel can be taken off its wall. */
const PANEL_LOOP_M = 0.1;
const STEP_M = 0.01;
/** Less than this is a length's rounding, not a length. */
const ROUNDING_M = 1e-9;

export interface CutLength {
	/** Rounded up to the next centimetre. */
	readonly cutM: number;
	readonly allowance: string;
}

/** @param panelEnds ends that are clamped in a distribution panel */
export function cutLength({ gauge }: Pick<Conductor, 'gauge'>, lengthM: number, panelEnds: number): CutLength {
	const isHeavy = areaMm2(gauge) >= HEAVY_FROM_MM2;
	const { share, leastM, text } = isHeavy ? HEAVY : LIGHT;
	const loops = isHeavy ? 0 : panelEnds;
	const wantedM = lengthM + Math.max(share * lengthM, leastM) + loops * PANEL_LOOP_M;
	return {
		cutM: Math.ceil((wantedM - ROUNDING_M) / STEP_M) * STEP_M,
		allowance: loops === 0 ? text : `${text}; + 100 mm ${loops === 1 ? 'at the panel' : 'at each panel'}`
	};
}

/** How the lengths came about, for the foot of a table. */
export const CUT_LENGTH_NOTES: readonly string[] = [
	'Length: one way, from hole centre to hole centre along the run. Allowances: 3 %, at least 30 mm, from 6 AWG or 16 mm² up; 10 %, at least 150 mm, below, and 100 mm more for each end in a panel. Rounded up to the next 10 mm. Common practice, no source; add 150 mm for a hinge or a drip loop.',
	'Leads of batteries in parallel: cut them all to the longest of them, within 5 mm.'
];
