import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { change, run, serializeDiagram, start, undo } from '#core/diagram';
import { barFigures, bestPositions, bestSequence } from '#core/bars';
import { circuit } from '../../support/circuit.ts';
import { example, figures } from '../../support/examples/figures.ts';

const OHM = [1, 1, 1, 1, 1];
const along = (...drawnA: number[]) => barFigures([{ caseId: 'peak', drawnA }], OHM.slice(0, drawnA.length - 1));

// A four-position bus fed on its left end stud: inverter 185 A, panel 46, radio 25, DC-DC −40, solar −28, mains charger −30.
describe('what flows along a bar', () => {
	test('with the chargers between feed and inverter', () => {
		// The panel hangs on the feed stud. By Kirchhoff: 210 A four times, then 25 A.
		const { squaresA2, greatestA } = along(-210, 0, 0, 0, 185, 25);
		expect(squaresA2[0]!.sum).toBe(4 * 210 ** 2 + 25 ** 2);
		expect(greatestA).toBe(210);
	});

	test('with the inverter next to the feed is 60 % less heat', () => {
		const worse = along(-210, 0, 0, 0, 185, 25).squaresA2[0]!.sum;
		const better = along(-256, 185, 46, 25, 0, 0).squaresA2[0]!.sum;
		expect(better).toBe(256 ** 2 + 71 ** 2 + 25 ** 2);
		expect(1 - better / worse).toBeCloseTo(0.6, 2);
	});

	test('while driving by day', () => {
		// 188, 3, −43, −68, −28: the feed gives what the sources do not.
		const { squaresA2 } = along(-188, 185, 46, 25, -40, -28);
		expect(squaresA2[0]!.sum).toBe(188 ** 2 + 3 ** 2 + 43 ** 2 + 68 ** 2 + 28 ** 2);
	});
});

describe('the best sequence', () => {
	const cases = [
		{ caseId: 'peak', drawnA: [-210, 0, 0, 0, 185, 25] },
		{ caseId: 'driving', drawnA: [-142, -30, -28, -40, 185, 55] }
	];

	test('puts the inverter next to the feed', () => {
		const order = bestSequence(cases, OHM, ['plain', 'fused', 'fused', 'fused', 'fused', 'plain']);
		expect(Math.abs(order.indexOf(4) - order.indexOf(0))).toBe(1);
		const after = barFigures(
			cases.map(({ caseId, drawnA }) => ({ caseId, drawnA: order.map((from) => drawnA[from]!) })),
			OHM
		);
		expect(after.squaresA2[0]!.sum).toBe(210 ** 2 + 4 * 25 ** 2);
		expect(after.heatW).toBeLessThan(0.4 * barFigures(cases, OHM).heatW);
	});

	test('is the best of all', () => {
		const amps = fc.integer({ min: -100, max: 200 });
		fc.assert(
			fc.property(fc.array(fc.tuple(amps, amps), { minLength: 2, maxLength: 6 }), (circuits) => {
				const drawn = (index: 0 | 1) => [
					-circuits.reduce((sum, values) => sum + values[index], 0),
					...circuits.map((values) => values[index])
				];
				const both = [
					{ caseId: 'a', drawnA: drawn(0) },
					{ caseId: 'b', drawnA: drawn(1) }
				];
				const ohm = circuits.map(() => 1);
				const score = (order: readonly number[]) => {
					const { greatestA, heatW } = barFigures(
						both.map(({ caseId, drawnA }) => ({ caseId, drawnA: order.map((from) => drawnA[from]!) })),
						ohm
					);
					return [greatestA, heatW] as const;
				};
				const [greatestA, heatW] = score(bestSequence(both, ohm, circuits.map(() => 'stud').concat('stud')));
				for (const order of permutations([...drawn(0).keys()])) {
					const [otherA, otherW] = score(order);
					expect(otherA).toBeGreaterThan(greatestA - 1e-6);
					if (otherA < greatestA + 1e-6) expect(otherW).toBeGreaterThan(heatW - 1e-3);
				}
			}),
			{ numRuns: 12 }
		);
	});

	test('searches ten positions and two ends', () => {
		const loads = [5, 60, 0, 20, -40, 12, 90, -28, 33, 7];
		const drawnA = [-loads.reduce((sum, amps) => sum + amps, 0), ...loads, 0];
		const groups = ['plain', ...loads.map(() => 'fused'), 'plain'];
		const order = bestSequence(
			[{ caseId: 'peak', drawnA }],
			drawnA.slice(1).map(() => 1),
			groups
		);
		expect([...order].sort((a, b) => a - b)).toEqual([...order.keys()]);
		const after = barFigures(
			[{ caseId: 'peak', drawnA: order.map((from) => drawnA[from]!) }],
			drawnA.slice(1).map(() => 1)
		);
		// What the feed gives passes the first segment whatever the order.
		expect(after.greatestA).toBe(159);
	});
});

describe('positions of a bus', () => {
	test('take fuse, name, conductor and stack along, in one step', () => {
		const diagram = circuit(
			{
				b: ['battery', { capacityAh: 300 }],
				d: ['fused-bus', { fuseA: [60, null, 40, 250], names: ['a', '', 'c', 'inverter'] }],
				a: ['load', { draw: 10, connection: 'studs' }],
				c: ['load', { draw: 20, connection: 'studs' }],
				i: ['load', { draw: 180, connection: 'studs' }],
				n: ['negative-bus']
			},
			[
				['b.pos', 'd.L', { gauge: '4/0' }],
				['d.1', 'a.pos'],
				['d.3', 'c.pos'],
				['d.4', 'i.pos', { gauge: '2/0' }],
				['a.neg', 'n.1'],
				['c.neg', 'n.2'],
				['i.neg', 'n.3', { gauge: '2/0' }],
				['n.4', 'b.neg', { gauge: '4/0' }]
			],
			{ stacks: { 'd.4': ['W4', 'washer', 'nut'] } }
		);
		const plan = bestPositions(diagram, 'd', { keepEnds: true })!;
		expect(plan.slots.map(({ from }) => from)).toEqual(['L', '4', '3', '1', '2', 'R']);
		expect(plan.before.greatestA).toBeCloseTo(210, 3);
		expect(plan.moved).toBe(3);
		const history = run(start(diagram), plan.command!);
		expect(history.done).toHaveLength(1);
		expect(serializeDiagram(undo(history).diagram)).toBe(serializeDiagram(diagram));
		const { parts, conductors, stacks } = history.diagram;
		expect(parts.d!.params).toMatchObject({ fuseA: [250, 40, 60, null], names: ['inverter', 'c', 'a', ''] });
		expect(['W2', 'W3', 'W4'].map((id) => conductors[id]!.from.terminal)).toEqual(['3', '2', '1']);
		expect(stacks['d.1']?.map(({ kind }) => kind)).toEqual(['lug', 'washer', 'nut']);
		// The solver agrees: 210 A beyond the feed, 30 A beyond the inverter.
		expect(figures(history.diagram).linkA('on', 'd.bar-2')).toBeCloseTo(30, 3);
		expect(bestPositions(history.diagram, 'd')!.command).toBeNull();
	});

	test('make no error on the examples', () => {
		for (const name of ['ridge-post-before', 'pagemoor-after', 'otters-reach-after']) {
			const diagram = example(name);
			const plan = bestPositions(diagram, 'D')!;
			expect(plan.after.greatestA).toBeLessThanOrEqual(plan.before.greatestA + 1e-6);
			if (!plan.command) continue;
			expect(plan.command.refuse(diagram)).toBeNull();
			const count = (of: typeof diagram) => checkDiagram(of).findings.filter(({ severity }) => severity === 'error').length;
			expect(count(change(diagram, plan.command).diagram)).toBeLessThanOrEqual(count(diagram));
		}
	});

	test('are none on a part without a bar', () => {
		expect(bestPositions(example('ridge-post-after'), 'INV')).toBeNull();
		expect(bestPositions(example('ridge-post-after'), 'nowhere')).toBeNull();
	});
});

function* permutations(items: readonly number[]): Generator<number[]> {
	if (items.length < 2) yield [...items];
	else for (const [index, item] of items.entries()) for (const rest of permutations(items.toSpliced(index, 1))) yield [item, ...rest];
}
