import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { change, reorderStack, type Diagram } from '#core/diagram';
import { bestOrder, jointsOf, stackOf, type Stack, type TerminalCurrents } from '#core/studs';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';

/** Conductors of these gauges from a battery to one stud of a bus. */
const onStud = (gauges: readonly string[], options: CircuitOptions = {}, bus: Record<string, number | string> = {}): Diagram =>
	circuit(
		{ b: ['battery'], d: ['fused-bus', bus], f: ['fuse-block'] },
		gauges.map((gauge) => ['b.pos', 'd.L', { gauge }] as const),
		options
	);

/** One case; amps by conductor number, the block's last. */
function currentsOf(stack: Stack, amps: Readonly<Record<string, number>>): TerminalCurrents {
	const layers = [...stack.layers.keys()].filter((index) => ['lug', 'block'].includes(stack.layers[index]!.item.kind));
	const injectedA = layers.map((index) => {
		const { item } = stack.layers[index]!;
		return amps[item.kind === 'lug' ? item.conductor : 'f']!;
	});
	return { layers, byCase: [{ caseId: 'peak', injectedA }] };
}

function arranged(diagram: Diagram, amps: Readonly<Record<string, number>>, key = 'd.L') {
	const stack = stackOf(diagram, key)!;
	return { stack, ...bestOrder(diagram, stack, currentsOf(stack, amps)) };
}

const words = (order: Diagram['stacks'][string]) =>
	order.map((item) => (item.kind === 'lug' ? item.conductor : item.kind === 'block' ? 'block' : item.kind));

const heatOf = (diagram: Diagram, amps: Readonly<Record<string, number>>, key = 'd.L') => {
	const stack = stackOf(diagram, key)!;
	return jointsOf(stack, currentsOf(stack, amps)).reduce((sum, { heatW }) => sum + heatW, 0);
};

describe('the best order', () => {
	test('has the largest current lowest', () => {
		const { order, drawnW, bestW, changes, obstacles } = arranged(
			onStud(['4', '6', '4/0'], { stacks: { 'd.L': ['W1', 'W2', 'W3'] } }, { endUsableMm: 30 }),
			{ W1: -46, W2: -25, W3: 255 }
		);
		expect(words([...order])).toEqual(['W3', 'W1', 'W2']);
		// By hand, 20 µΩ a face: 0.79 W against 3.0 W.
		expect(bestW).toBeCloseTo(0.79, 2);
		expect(drawnW).toBeCloseTo(3.04, 2);
		expect(changes).toBe(true);
		expect(obstacles).toEqual([]);
	});

	test('lets currents cancel where that is cooler', () => {
		// 100 in, 90 and 80 out, 70 in: by size the joints carry 0, 100, 10, 70; with 100 and 90 together on top 0, …, 10.
		const amps = { W1: 100, W2: -90, W3: -80, W4: 70 };
		const diagram = onStud(['2', '2', '2', '2'], {}, { endUsableMm: 40 });
		const { order, bestW } = arranged(diagram, amps);
		const bySize = change(
			diagram,
			reorderStack({ stud: 'd.L', stack: ['W1', 'W2', 'W3', 'W4'].map((conductor) => ({ kind: 'lug', conductor, end: 'to' })) })
		).diagram;
		expect(bestW).toBeLessThan(heatOf(bySize, amps));
		expect(words([...order])).not.toEqual(['W1', 'W2', 'W3', 'W4']);
	});

	test('puts hardware on top and keeps which there is', () => {
		const { order, changes } = arranged(onStud(['4/0', '4'], { stacks: { 'd.L': ['W1', 'washer', 'W2', 'nut'] } }, { endUsableMm: 30 }), {
			W1: 100,
			W2: -50
		});
		expect(words([...order])).toEqual(['W1', 'W2', 'washer', 'nut']);
		expect(changes).toBe(true);
	});

	test('changes nothing where the drawn one is best', () => {
		const { order, changes } = arranged(onStud(['4/0', '4'], {}, { endUsableMm: 30 }), { W1: 100, W2: -50 });
		expect(words([...order])).toEqual(['W1', 'W2']);
		expect(changes).toBe(false);
	});

	test('lays the widest pad lowest where nothing flows', () => {
		expect(words([...arranged(onStud(['10', '2/0', '4']), { W1: 0, W2: 0, W3: 0 }).order])).toEqual(['W2', 'W3', 'W1']);
	});

	test('never lays a plate on a ring', () => {
		const diagram = onStud(['10', '4/0'], { mounts: { f: 'd.L' } }, { endUsableMm: 30 });
		// The ring carries more than the block, and so would go below it.
		expect(words([...arranged(diagram, { W1: 40, W2: 100, f: -5 }).order])).toEqual(['W2', 'block', 'W1']);
	});

	test('has the fuse lowest on its own post', () => {
		const diagram = circuit({ f: ['fuse-block'], d: ['positive-bus'] }, [['f.post', 'd.1']], { stacks: { 'f.post': ['W1', 'fuse'] } });
		const { order, changes } = arranged(diagram, { W1: -50 }, 'f.post');
		expect(words([...order])).toEqual(['fuse', 'W1']);
		expect(changes).toBe(true);
	});

	test('is the coolest of all for up to four', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: -300, max: 300 }), { minLength: 2, maxLength: 4 }), (values) => {
				const diagram = onStud(
					values.map(() => '2'),
					{},
					{ endUsableMm: 60 }
				);
				const amps = Object.fromEntries(values.map((value, index) => [`W${index + 1}`, value]));
				const { order, bestW } = arranged(diagram, amps);
				const after = change(diagram, reorderStack({ stud: 'd.L', stack: [...order] })).diagram;
				expect(heatOf(after, amps)).toBeCloseTo(bestW, 6);
				// Any exchange of two is no cooler, but for pads, and these are all of one width.
				for (let i = 0; i < order.length; i++) {
					for (let j = i + 1; j < order.length; j++) {
						const other = [...order];
						[other[i], other[j]] = [other[j]!, other[i]!];
						expect(heatOf(change(diagram, reorderStack({ stud: 'd.L', stack: other })).diagram, amps)).toBeGreaterThan(bestW - 1e-9);
					}
				}
			}),
			{ numRuns: 60 }
		);
	});
});

describe('a stud that cannot hold it all', () => {
	test('says by how much the thread is short, and what to move', () => {
		// Pads 4.8, 3.8, 2.0, plate 3.0, washers 1.6 and 2.0, nut 6.8 and 1.5 × 1.25: 25.9 on 20 mm.
		const { obstacles, reliefs } = arranged(onStud(['4/0', '2/0', '6'], { mounts: { f: 'd.L' } }), { W1: 255, W2: -100, W3: -25, f: -40 });
		// The two that carry least, 6 AWG and plate, free 5.0 of the 5.9 mm.
		expect(obstacles.map(({ kind }) => kind)).toEqual(['thread-too-short']);
		expect(obstacles[0]!.excess).toBeCloseTo(17.2 + 6.8 + 1.875 - 20, 6);
		expect(reliefs[0]).toMatchObject({
			kind: 'move',
			text: 'Move the fuse block F and the 2/0 AWG lug of W2 to another stud.'
		} as object);
		expect(reliefs.map(({ kind }) => kind)).toContain('longer-stud');
		expect(reliefs.map(({ kind }) => kind)).toContain('adapter');
	});

	test('says how many terminals are too many', () => {
		const { obstacles, reliefs } = arranged(onStud(['10', '10', '10', '10', '10']), { W1: 5, W2: 4, W3: 3, W4: 2, W5: 1 });
		expect(obstacles).toMatchObject([{ kind: 'too-many', excess: 1 }]);
		expect(reliefs[0]).toMatchObject({ kind: 'move', items: [{ conductor: 'W5' }] });
	});

	test('names a plate that does not fit', () => {
		const { obstacles } = arranged(onStud(['4/0'], { mounts: { f: 'd.L' } }, { endThread: 'M10' }), { W1: 100, f: -20 });
		expect(obstacles.map(({ kind }) => kind)).toEqual(['plate-does-not-fit']);
	});
});
