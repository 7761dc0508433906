/** Current and heat in each joint of a stack. */
import type { CaseId } from '#core/diagram';
import type { ThreadId } from '#core/tables';
import type { Stack } from './types.ts';

/** Amps that lugs and block plates bring to a stud; negative where one takes current away. */
export interface TerminalCurrents {
	/** Lugs and block plates from the seat up: indices into the stack's layers. */
	readonly layers: readonly number[];
	readonly byCase: readonly { readonly caseId: CaseId; readonly injectedA: readonly number[] }[];
}

/** Two faces under one nut, in the case in which they are hottest. */
export interface Joint {
	/** Layer below and above, as indices into the stack's layers; null is the seat. */
	readonly below: number | null;
	readonly above: number;
	readonly resistanceOhm: number;
	/** Magnitude, amps. */
	readonly currentA: number;
	readonly caseId: CaseId | null;
	readonly dropV: number;
	readonly heatW: number;
}

/** Clean copper faces at the right torque, ohms: common practice, no source. */
const FACE_OHM: Record<ThreadId, number> = {
	M4: 100e-6,
	'#8': 100e-6,
	M5: 100e-6,
	'#10': 100e-6,
	M6: 50e-6,
	'1/4': 50e-6,
	M8: 20e-6,
	'5/16': 20e-6,
	M10: 10e-6,
	'3/8': 10e-6,
	M12: 10e-6,
	'1/2': 10e-6
};

/** What a washer or nut adds where current has to pass it: common practice, no source. */
const HARDWARE_OHM = 100e-6;

export const faceOhm = (thread: ThreadId): number => FACE_OHM[thread];

/** Joints from the seat up, each carrying all that the layers above it bring. Empty for a clamp. */
export function jointsOf(stack: Stack, { layers: terminals, byCase }: TerminalCurrents): Joint[] {
	const { thread } = stack.terminal;
	if (thread === null) return [];
	const joints: Joint[] = [];
	let below: number | null = null;
	let hardware = 0;
	for (const [above, layer] of stack.layers.entries()) {
		if (!layer.conducts) {
			hardware += 1;
			continue;
		}
		const resistanceOhm = FACE_OHM[thread] + hardware * HARDWARE_OHM;
		const worst = byCase
			.map(({ caseId, injectedA }) => ({
				caseId: caseId as CaseId | null,
				currentA: Math.abs(terminals.reduce((sum, index, position) => sum + (index >= above ? injectedA[position]! : 0), 0))
			}))
			.reduce((hot, other) => (other.currentA > hot.currentA ? other : hot), { caseId: null, currentA: 0 });
		joints.push({
			below,
			above,
			resistanceOhm,
			...worst,
			dropV: worst.currentA * resistanceOhm,
			heatW: worst.currentA ** 2 * resistanceOhm
		});
		below = above;
		hardware = 0;
	}
	return joints;
}

/** Heat of things laid on one another on clean faces, watts: each face carries what all above it bring. */
export function stackHeatW(injectedA: readonly number[], resistanceOhm: number): number {
	let aboveA = 0;
	let heatW = 0;
	for (const currentA of injectedA.toReversed()) {
		aboveA += currentA;
		heatW += resistanceOhm * aboveA ** 2;
	}
	return heatW;
}
