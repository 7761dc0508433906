/**
 * Node voltages by the plain textbook way, as a reference: the full nodal matrix, solved by ml-matrix (LU), an
 * independent general-purpose library. Sources are ignored; loads are given as currents or are resistances.
 */
import { LuDecomposition, Matrix } from 'ml-matrix';
import type { Network } from '#core/network';

/** @returns volts by node against `reference` */
export function denseVoltages({ nodeCount, branches, batteries, loads }: Network, reference: number, loadA?: Float64Array): Float64Array {
	const conductance = Matrix.zeros(nodeCount, nodeCount);
	const current = Matrix.zeros(nodeCount, 1);
	const add = (m: Matrix, row: number, column: number, value: number): void => void m.set(row, column, m.get(row, column) + value);
	const resistor = (a: number, b: number, ohm: number): void => {
		add(conductance, a, a, 1 / ohm);
		add(conductance, b, b, 1 / ohm);
		add(conductance, a, b, -1 / ohm);
		add(conductance, b, a, -1 / ohm);
	};
	const flow = (from: number, to: number, amps: number): void => {
		add(current, from, 0, -amps);
		add(current, to, 0, amps);
	};
	for (const { a, b, resistanceOhm } of branches) resistor(a, b, resistanceOhm);
	for (const { positive, negative, emfV, resistanceOhm } of batteries) {
		resistor(positive, negative, resistanceOhm);
		flow(negative, positive, emfV / resistanceOhm);
	}
	for (const { index, positive, negative, draw } of loads) {
		if (draw.kind === 'resistance') resistor(positive, negative, draw.ohms);
		else flow(positive, negative, loadA?.[index] ?? (draw.kind === 'current' ? draw.amps : 0));
	}
	const kept = Array.from({ length: nodeCount }, (_, node) => node).filter((node) => node !== reference);
	const solution = new LuDecomposition(conductance.selection(kept, kept)).solve(current.selection(kept, [0]));
	const volts = new Float64Array(nodeCount);
	kept.forEach((node, row) => (volts[node] = solution.get(row, 0)));
	return volts;
}
