import { expect, test } from 'vitest';
import { buildNetwork } from '#core/network';
import { solveCase } from '#core/solver';
import { circuit } from '../../support/circuit.ts';

const two = circuit(
	{ a: ['battery', { emfV: 12, resistanceMilliohm: 10 }], b: ['battery', { emfV: 12, resistanceMilliohm: 10 }], l: ['load', { draw: 40 }] },
	[
		['a.pos', 'b.pos'],
		['a.neg', 'b.neg'],
		['b.pos', 'l.pos'],
		['l.neg', 'b.neg']
	],
	{ cases: { both: {}, lost: { levels: { b: 0 } }, none: { levels: { a: 0, b: 0 } } } }
);
const network = buildNetwork(two);
const point = (id: string) => solveCase(network, id, two.cases[id]!);

test('a battery at level 0 is disconnected, and the other one carries all', () => {
	const { batteryA, status, residualA } = point('lost');
	expect(status).toBe('solved');
	expect(batteryA[0]).toBeCloseTo(40, 6);
	expect(batteryA[1]).toBe(0);
	expect(residualA).toBeLessThan(1e-6);
	expect(point('both').batteryA[1]).toBeGreaterThan(20);
});

test('with every battery lost nothing is fed', () => {
	expect(point('none').loadFed).toEqual([false]);
	expect([...point('none').loadA]).toEqual([0]);
});
