import type { Network } from '#core/network';
import type { Circuit, Levels } from './circuit.ts';
import type { Connection } from './connection.ts';
import type { Factors } from './elimination.ts';

/** What a source's output does: holds its set voltage, gives all it can, or nothing because the rail is higher. */
export type SourceState = 'regulating' | 'limited' | 'off';

export interface Settled {
	readonly nodeV: Float64Array;
	readonly sourceA: Float64Array;
	readonly states: readonly SourceState[];
	readonly factors: Factors;
	/** False when the sources' states did not come to rest; the voltages are then those of the last trial. */
	readonly atRest: boolean;
}

/** A regulating output gives way by this much from no load to its limit. */
const DROOP_V = 1e-3;
/** States change only beyond this, so that rounding cannot make them flicker. */
const KNEE_TOLERANCE_V = 1e-9;
/**
 * A limited or blocked source that alone holds its rail still pulls it, ever so slightly, towards its set voltage:
 * without that the rail's voltage would be undefined.
 */
const FAINT_SHARE = 1e-9;

/** Straight piece of a source's curve: delivers `shortA − slopeS × volts`. */
interface Piece {
	readonly slopeS: number;
	readonly shortA: number;
}

/** Solves the network for given load currents, finding the state of each one-way, current-limited source. */
export function supplyOf(network: Network, circuit: Circuit, levels: Levels, connection: Connection) {
	const { nodeCount, branches, batteries, sources, loads } = network;
	const { first } = circuit;
	const conductanceS = new Float64Array(circuit.edgeCount);
	const emfA = new Float64Array(nodeCount);

	for (const { index, resistanceOhm } of branches) conductanceS[index] = levels.closed[index] ? 1 / resistanceOhm : 0;
	for (const { index, resistanceOhm, positive, negative } of batteries) {
		if (!levels.battery[index]) continue;
		const emfV = levels.emfV[index]!;
		conductanceS[first.battery + index] = 1 / resistanceOhm;
		emfA[positive]! += emfV / resistanceOhm;
		emfA[negative]! -= emfV / resistanceOhm;
	}
	let edge = first.load;
	for (const { index, draw } of loads) {
		if (draw.kind !== 'resistance') continue;
		conductanceS[edge++] = connection.loadFed[index] ? levels.load[index]! / Math.max(draw.ohms, 1e-6) : 0;
	}

	const limitA = sources.map(({ index, maxA }) => (connection.sourceOn[index] ? maxA * levels.source[index]! : 0));
	const kneeV = (i: number): number => sources[i]!.setV - DROOP_V;
	const pieceOf = (i: number, state: SourceState): Piece => {
		if (!connection.sourceOn[i]) return { slopeS: 0, shortA: 0 };
		const { setV } = sources[i]!;
		const slopeS = limitA[i]! / DROOP_V;
		if (state === 'regulating') return { slopeS, shortA: slopeS * setV };
		const faintS = connection.holdsRail[i] ? (FAINT_SHARE * limitA[i]!) / Math.max(setV, 1) : 0;
		return state === 'limited' ? { slopeS: faintS, shortA: limitA[i]! + faintS * kneeV(i) } : { slopeS: faintS, shortA: faintS * setV };
	};

	const factored = new Map<string, Factors>();
	const factorsFor = (pieces: readonly Piece[], key: string): Factors => {
		let factors = factored.get(key);
		if (!factors) {
			pieces.forEach(({ slopeS }, i) => (conductanceS[first.source + i] = slopeS));
			factored.set(key, (factors = circuit.elimination.factor(conductanceS, connection.pinned)));
		}
		return factors;
	};

	let states: SourceState[] = sources.map(() => 'regulating');
	const stateAt = (i: number, volts: number): SourceState => {
		const state = states[i]!;
		if (!connection.sourceOn[i]) return state;
		const { setV } = sources[i]!;
		if (state === 'regulating') {
			if (volts < kneeV(i) - KNEE_TOLERANCE_V) return 'limited';
			return volts > setV + KNEE_TOLERANCE_V ? 'off' : 'regulating';
		}
		if (state === 'limited') return volts > kneeV(i) + KNEE_TOLERANCE_V ? 'regulating' : 'limited';
		return volts < setV - KNEE_TOLERANCE_V ? 'regulating' : 'off';
	};

	/** @param loadA amps drawn by each load that is not a resistance; the states found last are tried first */
	const settle = (loadA: Float64Array): Settled => {
		const allAtOnce = 2 * sources.length + 4;
		const bound = allAtOnce + 20 * sources.length;
		for (let trial = 0; ; trial++) {
			const pieces = states.map((state, i) => pieceOf(i, state));
			const factors = factorsFor(pieces, states.map((state) => state[0]).join(''));
			const injectionA = emfA.slice();
			for (const { index, positive, negative } of loads) {
				injectionA[positive]! -= loadA[index]!;
				injectionA[negative]! += loadA[index]!;
			}
			pieces.forEach(({ shortA }, i) => {
				injectionA[sources[i]!.positive]! += shortA;
				injectionA[sources[i]!.negative]! -= shortA;
			});
			const nodeV = factors.solve(injectionA);
			const volts = sources.map(({ positive, negative }) => nodeV[positive]! - nodeV[negative]!);
			const wanted = states.map((_, i) => stateAt(i, volts[i]!));
			const atRest = wanted.every((state, i) => state === states[i]);
			if (atRest || trial >= bound) {
				const sourceA = Float64Array.from(pieces, ({ slopeS, shortA }, i) => Math.max(0, shortA - slopeS * volts[i]!));
				return { nodeV, sourceA, states: [...states], factors, atRest };
			}
			// Changing all at once is quick but may go in circles; changing only the first one cannot (least-index rule).
			const changing = wanted.findIndex((state, i) => state !== states[i]);
			states = trial < allAtOnce ? wanted : states.map((state, i) => (i === changing ? wanted[i]! : state));
		}
	};
	return { settle };
}
