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

/** Two faces under one nut. */
export interface Joint {
	/** Layer below and above, as indices into the stack's layers; null is the seat. */
	readonly below: number | null;
	readonly above: number;
	readonly resistanceOhm: number;
	/** Magnitude, amps. */
	readonly currentA: number;
	/** Which way it passes; toward the seat where none flows. */
	readonly toward: 'seat' | 'nut';
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
export const HARDWARE_OHM = 100e-6;

export const faceOhm = (thread: ThreadId): number => FACE_OHM[thread];

/** Joints from the seat up, each carrying all that the layers above it bring, in the case in which it is hottest. Empty for a clamp. */
export const jointsOf = (stack: Stack, { layers, byCase }: TerminalCurrents): Joint[] =>
	faces(stack).map((face) => {
		const flows = byCase.map((values) => ({ ...values, throughA: throughA(layers, values.injectedA, face.above) }));
		const worst = flows.reduce<{ caseId: CaseId | null; throughA: number }>(
			(hot, other) => (Math.abs(other.throughA) > Math.abs(hot.throughA) ? other : hot),
			{ caseId: null, throughA: 0 }
		);
		return jointWith(face, worst.throughA, worst.caseId);
	});

/** Joints from the seat up in one case; without current where there is no such case. */
export function jointsIn(stack: Stack, { layers, byCase }: TerminalCurrents, caseId: CaseId): Joint[] {
	const values = byCase.find((other) => other.caseId === caseId);
	return faces(stack).map((face) => jointWith(face, values ? throughA(layers, values.injectedA, face.above) : 0, caseId));
}

type Face = Pick<Joint, 'below' | 'above' | 'resistanceOhm'>;

function faces({ terminal: { thread }, layers }: Stack): Face[] {
	if (thread === null) return [];
	const found: Face[] = [];
	let below: number | null = null;
	let hardware = 0;
	for (const [above, layer] of layers.entries()) {
		if (!layer.conducts) {
			hardware += 1;
			continue;
		}
		found.push({ below, above, resistanceOhm: FACE_OHM[thread] + hardware * HARDWARE_OHM });
		below = above;
		hardware = 0;
	}
	return found;
}

const throughA = (terminals: readonly number[], injectedA: readonly number[], from: number): number =>
	terminals.reduce((sum, index, position) => sum + (index >= from ? injectedA[position]! : 0), 0);

const jointWith = (face: Face, amps: number, caseId: CaseId | null): Joint => {
	const currentA = Math.abs(amps);
	return {
		...face,
		currentA,
		toward: amps < 0 ? 'nut' : 'seat',
		caseId,
		dropV: currentA * face.resistanceOhm,
		heatW: currentA ** 2 * face.resistanceOhm
	};
};

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
