/** How long to cut a conductor. Allowances are common practice, no source. */
import { areaMm2 } from '#core/conductors';
import type { Conductor } from '#core/diagram';
import { millimetresText, percentText } from '#core/units';

/** From here on a conductor is a battery or inverter cable: 6 AWG, 16 mm². */
const HEAVY_FROM_MM2 = 13;

const HEAVY = { share: 0.03, leastM: 0.03 };
const LIGHT = { share: 0.1, leastM: 0.15 };
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
	const { share, leastM } = isHeavy ? HEAVY : LIGHT;
	const loops = isHeavy ? 0 : panelEnds;
	const text = allowanceText({ share, leastM });
	const wantedM = lengthM + Math.max(share * lengthM, leastM) + loops * PANEL_LOOP_M;
	return {
		cutM: Math.ceil((wantedM - ROUNDING_M) / STEP_M) * STEP_M,
		allowance: loops === 0 ? text : `${text}; + ${mm(PANEL_LOOP_M)} ${loops === 1 ? 'at the panel' : 'at each panel'}`
	};
}

const mm = (lengthM: number): string => millimetresText(1000 * lengthM);
const allowanceText = ({ share, leastM }: typeof HEAVY): string => `${percentText(100 * share)}, at least ${mm(leastM)}`;

/** How the lengths came about, for the foot of a table. */
export const cutLengthNotes = (): readonly string[] => [
	`Length: one way, from hole centre to hole centre along the run. Allowances: ${allowanceText(HEAVY)}, from 6 AWG or 16 mm² up; ${allowanceText(LIGHT)}, below, and ${mm(PANEL_LOOP_M)} more for each end in a panel. Rounded up to the next ${mm(STEP_M)}. Common practice, no source; add ${mm(0.15)} for a hinge or a drip loop.`,
	`Leads of batteries in parallel: cut them all to the longest of them, within ${mm(0.005)}.`
];
