/**
 * Node voltages by a general-purpose library, for networks too large for a full matrix: the nodal matrix in
 * compressed columns, factored and solved by mathjs (sparse LU), then improved once by its own residual.
 */
import { lusolve, matrix, slu, type LUDecomposition, type Matrix } from 'mathjs';
import type { Network } from '#core/network';

/** The constructor takes compressed columns, which its types do not say. */
const Sparse = (matrix('sparse') as Matrix).constructor as unknown as new (columns: {
	values: number[];
	index: number[];
	ptr: number[];
	size: [number, number];
}) => Matrix;

/** @returns volts by node against `reference`; sources are ignored, loads are resistances or given currents */
export function sparseVoltages({ nodeCount, branches, batteries, loads }: Network, reference: number): Float64Array {
	const columns: Map<number, number>[] = Array.from({ length: nodeCount }, () => new Map());
	const current = new Float64Array(nodeCount);
	const add = (a: number, b: number, siemens: number): void => void columns[b]!.set(a, (columns[b]!.get(a) ?? 0) + siemens);
	const resistor = (a: number, b: number, ohm: number): void => {
		add(a, a, 1 / ohm);
		add(b, b, 1 / ohm);
		add(a, b, -1 / ohm);
		add(b, a, -1 / ohm);
	};
	const flow = (from: number, to: number, amps: number): void => {
		current[from]! -= amps;
		current[to]! += amps;
	};
	for (const { a, b, resistanceOhm } of branches) resistor(a, b, resistanceOhm);
	for (const { positive, negative, emfV, resistanceOhm } of batteries) {
		resistor(positive, negative, resistanceOhm);
		flow(negative, positive, emfV / resistanceOhm);
	}
	for (const { positive, negative, draw } of loads) {
		if (draw.kind === 'resistance') resistor(positive, negative, draw.ohms);
		else if (draw.kind === 'current') flow(positive, negative, draw.amps);
	}

	const kept = Array.from({ length: nodeCount }, (_, node) => node).filter((node) => node !== reference);
	const row = (node: number): number => (node > reference ? node - 1 : node);
	const values: number[] = [];
	const index: number[] = [];
	const ptr = [0];
	for (const node of kept) {
		const entries = [...columns[node]!].filter(([other]) => other !== reference).sort(([a], [b]) => a - b);
		for (const [other, siemens] of entries) {
			index.push(row(other));
			values.push(siemens);
		}
		ptr.push(values.length);
	}
	const sparse = new Sparse({ values, index, ptr, size: [kept.length, kept.length] });
	const factors = slu(sparse, 1, 0.001);
	const first = solved(
		factors,
		kept.map((node) => current[node]!)
	);

	const residual = kept.map((node) => current[node]!);
	for (let column = 0; column < kept.length; column++)
		for (let k = ptr[column]!; k < ptr[column + 1]!; k++) residual[index[k]!]! -= values[k]! * first[column]!;
	const correction = solved(factors, residual);

	const volts = new Float64Array(nodeCount);
	kept.forEach((node, i) => (volts[node] = first[i]! + correction[i]!));
	return volts;
}

function solved(factors: LUDecomposition, right: readonly number[]): number[] {
	const column = matrix(right.map((value) => [value]));
	return (lusolve(factors as never, column as never) as unknown as Matrix).toArray().map((entry) => (entry as number[])[0]!);
}
