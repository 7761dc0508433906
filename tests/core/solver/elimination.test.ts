import * as fc from 'fast-check';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, test, vi } from 'vitest';
import { planElimination } from '#core/solver';

// Many random systems: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 60_000 });

const anySystem = fc.integer({ min: 2, max: 30 }).chain((nodeCount) => {
	const node = fc.nat({ max: nodeCount - 1 });
	return fc.record({
		nodeCount: fc.constant(nodeCount),
		edges: fc.array(fc.tuple(node, node), { minLength: 1, maxLength: 60 }),
		tree: fc.array(fc.nat(), { minLength: nodeCount - 1, maxLength: nodeCount - 1 }),
		conductances: fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 90, maxLength: 90 }),
		injection: fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: nodeCount, maxLength: nodeCount }),
		pin: node
	});
});

test('gives the voltages of a dense Cholesky factorisation (ml-matrix), whatever the shape of the network', () => {
	fc.assert(
		fc.property(anySystem, ({ nodeCount, edges, tree, conductances, injection, pin }) => {
			const all = [...tree.map((to, i) => [i + 1, to % (i + 1)] as const), ...edges];
			const conductanceS = Float64Array.from(all, (_, i) => conductances[i]!);
			const pinned = new Uint8Array(nodeCount);
			pinned[pin] = 1;
			const found = planElimination({ nodeCount, edges: all }).factor(conductanceS, pinned).solve(Float64Array.from(injection));

			const matrix = Matrix.zeros(nodeCount, nodeCount);
			all.forEach(([a, b], i) => {
				if (a === b) return;
				for (const [row, column, sign] of [
					[a, a, 1],
					[b, b, 1],
					[a, b, -1],
					[b, a, -1]
				] as const) {
					matrix.set(row, column, matrix.get(row, column) + sign * conductanceS[i]!);
				}
			});
			const kept = [...injection.keys()].filter((node) => node !== pin);
			const reduced = matrix.selection(kept, kept);
			const right = Matrix.columnVector(kept.map((node) => injection[node]!));
			const factors = new CholeskyDecomposition(reduced);
			const first = factors.solve(right);
			// Sums with subtractions lose digits where the pin hangs on a thread: what is left over is solved for again.
			const expected = Matrix.add(first, factors.solve(Matrix.sub(right, reduced.mmul(first))));
			kept.forEach((node, row) => expect(Math.abs(found[node]! - expected.get(row, 0))).toBeLessThan(1e-8 * (1 + Math.abs(found[node]!))));
			expect(found[pin]).toBe(0);
		}),
		{ numRuns: 200 }
	);
});

describe('one plan', () => {
	const ring = planElimination({
		nodeCount: 4,
		edges: [
			[0, 1],
			[1, 2],
			[2, 3],
			[3, 0]
		]
	});
	const at = (...nodes: number[]) => Uint8Array.from({ length: 4 }, (_, node) => (nodes.includes(node) ? 1 : 0));

	test('serves any values and any reference', () => {
		const volts = ring.factor(Float64Array.of(1, 1, 1, 1), at(0)).solve(Float64Array.of(0, 0, 1, 0));
		expect([...volts]).toEqual([0, 0.5, 1, 0.5]);
		const other = ring.factor(Float64Array.of(1, 1, 1, 1), at(2)).solve(Float64Array.of(0, 0, 1, 0));
		expect([...other]).toEqual([0, 0, 0, 0]);
	});

	test('serves open branches; a part cut off without a reference stays at zero', () => {
		const volts = ring.factor(Float64Array.of(1, 0, 1, 0), at(0)).solve(Float64Array.of(0, 1, 0, 0));
		expect([...volts]).toEqual([0, 1, 0, 0]);
	});
});

test('an island hardly tied to its reference keeps full precision', () => {
	// A chain on one end of which 1e-12 S leads to the reference; the current through the chain comes back at its end.
	const nodeCount = 50;
	const edges = Array.from({ length: nodeCount - 1 }, (_, i) => [i, i + 1] as const);
	const conductanceS = Float64Array.from(edges, (_, i) => (i === 0 ? 1e-12 : 1e3));
	const pinned = new Uint8Array(nodeCount);
	pinned[0] = 1;
	const injectionA = new Float64Array(nodeCount);
	injectionA[nodeCount - 1] = 100;
	injectionA[1] = -100;
	const volts = planElimination({ nodeCount, edges }).factor(conductanceS, pinned).solve(injectionA);
	expect(volts[nodeCount - 1]! - volts[1]!).toBeCloseTo((100 * (nodeCount - 2)) / 1e3, 2);
});
