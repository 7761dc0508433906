/** The passes over the tree of bridges against a plain maximum flow and plain removal, on random graphs. */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { bridgesOf } from '../../../src/core/protection/bridges.ts';
import { flowTree } from '../../../src/core/protection/tree-flow.ts';
import { edmondsKarp } from '../../support/edmonds-karp.ts';

// Many random graphs: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 60_000 });

/** Stands for infinity in the reference: more than all finite amounts together. */
const HUGE = 1e9;
const finite = (amps: number): number => (amps === Infinity ? HUGE : amps);
const infinite = (amps: number): number => (amps >= HUGE ? Infinity : amps);

const amount = fc.constantFrom(0, 5, 7.5, 10, 40, Infinity);

/** A tree or a few, with loops, unlimited and one-way arcs and arcs from a node to itself. */
const anyGraph = fc.integer({ min: 1, max: 14 }).chain((nodeCount) => {
	const node = fc.nat({ max: nodeCount - 1 });
	return fc.record({
		nodeCount: fc.constant(nodeCount),
		arcs: fc
			.array(fc.record({ from: node, to: node, capacity: amount, reverse: amount, twoWay: fc.boolean() }), { maxLength: 18 })
			.map((arcs) => arcs.map(({ twoWay, ...arc }) => (twoWay ? { ...arc, reverse: arc.capacity } : arc))),
		supplies: fc.array(fc.oneof({ weight: 2, arbitrary: fc.constant(0) }, amount), { minLength: nodeCount, maxLength: nodeCount })
	});
});

function reference(
	nodeCount: number,
	arcs: readonly { from: number; to: number; capacity: number; reverse: number }[],
	supplies: readonly number[],
	sink: number
): number {
	const plain = arcs.flatMap(({ from, to, capacity, reverse }) => [
		{ from, to, capacity: finite(capacity) },
		{ from: to, to: from, capacity: finite(reverse) }
	]);
	const fed = supplies.map((amps, to) => ({ from: nodeCount, to, capacity: finite(amps) }));
	return infinite(edmondsKarp(nodeCount + 1, [...plain, ...fed], nodeCount, sink));
}

const isReached = (nodeCount: number, edges: readonly { from: number; to: number }[], start: number, goal: number): boolean =>
	edmondsKarp(
		nodeCount,
		edges.flatMap(({ from, to }) => [
			{ from, to, capacity: 1 },
			{ from: to, to: from, capacity: 1 }
		]),
		start,
		goal
	) > 0;

test('a bridge is an edge without which its ends are apart', () => {
	fc.assert(
		fc.property(anyGraph, ({ nodeCount, arcs }) => {
			const found = bridgesOf(nodeCount, arcs);
			arcs.forEach(({ from, to }, i) => {
				const rest = arcs.filter((_, j) => j !== i);
				expect(found[i] === 1).toBe(from !== to && !isReached(nodeCount, rest, from, to));
			});
		}),
		{ numRuns: 300 }
	);
});

test('flows into nodes and into the ends of bridges equal the textbook maximum flow, with the arcs and against them', () => {
	fc.assert(
		fc.property(anyGraph, fc.boolean(), ({ nodeCount, arcs, supplies }, against) => {
			const walked = against ? arcs.map((arc) => ({ ...arc, from: arc.to, to: arc.from })) : arcs;
			const flow = flowTree(nodeCount, arcs).flow(Float64Array.from(supplies), against);
			for (let node = 0; node < nodeCount; node++) expect(flow.into(node)).toBeCloseTo(reference(nodeCount, walked, supplies, node), 6);
			const bridges = bridgesOf(nodeCount, arcs);
			arcs.forEach((arc, i) => {
				const rest = walked.filter((_, j) => j !== i);
				for (const end of ['from', 'to'] as const) {
					const into = flow.intoEnd(i, end);
					if (!bridges[i]) expect(into).toBeNull();
					else expect(into).toBeCloseTo(reference(nodeCount, rest, supplies, arc[end]), 6);
				}
			});
		}),
		{ numRuns: 300 }
	);
});

test('what is said to limit a flow adds up to it', () => {
	fc.assert(
		fc.property(anyGraph, ({ nodeCount, arcs, supplies }) => {
			const flow = flowTree(nodeCount, arcs).flow(Float64Array.from(supplies));
			for (let node = 0; node < nodeCount; node++) {
				const limits = flow.limitsInto(node);
				if (!limits || flow.into(node) === Infinity) continue;
				// A limit is met in the direction in which the other one gives nothing, or both ways alike.
				const least = limits.arcs.reduce((sum, i) => sum + Math.min(arcs[i]!.capacity || Infinity, arcs[i]!.reverse || Infinity), 0);
				const most = limits.arcs.reduce((sum, i) => sum + Math.max(arcs[i]!.capacity, arcs[i]!.reverse), 0);
				const spent = supplies.reduce((sum, amps, at) => sum + (limits.isSpent(at) ? amps : 0), 0);
				expect(least + spent).toBeLessThanOrEqual(flow.into(node) + 1e-9);
				expect(most + spent).toBeGreaterThanOrEqual(flow.into(node) - 1e-9);
			}
		}),
		{ numRuns: 300 }
	);
});
