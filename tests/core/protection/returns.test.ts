/** Negative conductors against a plain maximum flow on the two layers, written out again. */
import * as fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { buildNetwork, type Network } from '#core/network';
import { letThroughBound, protectionOf } from '#core/protection';
import { edmondsKarp } from '../../support/edmonds-karp.ts';
import { largeDiagram } from '../../support/large-diagram.ts';
import { battery, fuse, load, network, source, wire } from '../../support/network.ts';

// Many random systems: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 60_000 });

/** Larger than any sum of ratings in these networks: stands for infinity in the reference. */
const HUGE = 1e9;

/** Batteries in series, fuses in returns, chargers, loads across anything, loops on both sides. */
const anySystem = fc.integer({ min: 2, max: 10 }).chain((size) => {
	const at = fc.nat({ max: size - 1 });
	const rating = fc.option(fc.constantFrom(5, 10, 40, 100), { nil: null });
	const few = <Value>(value: fc.Arbitrary<Value>, maxLength: number) => fc.array(value, { maxLength });
	const link = fc.record({ a: at, b: at, rating });
	const odd = fc.integer({ min: 0, max: 9 });
	return fc
		.record({
			tree: fc.array(link, { minLength: size - 1, maxLength: size - 1 }),
			returns: fc.array(link, { minLength: size - 1, maxLength: size - 1 }),
			loops: few(link, 2),
			returnLoops: few(link, 2),
			batteries: fc.array(fc.record({ p: at, n: at, odd }), { minLength: 1, maxLength: 3 }),
			loads: few(fc.record({ p: at, n: at, odd }), 6),
			sources: few(fc.record({ p: at, n: at, maxA: fc.constantFrom(10, 30), fedBy: fc.boolean(), blocksReverse: fc.boolean() }), 2),
			fusedReturns: odd
		})
		.map((spec) => {
			const join = (id: string, a: string, b: string, ratingA: number | null) =>
				ratingA === null ? wire(id, a, b) : fuse(id, a, b, ratingA);
			const isFused = spec.fusedReturns === 0;
			return network({
				batteries: spec.batteries.map(({ p, n, odd }, i) => battery(`B${i}`, `p${p}`, odd === 0 ? `p${n}` : `n${n}`)),
				branches: [
					...spec.tree.map(({ a, rating }, i) => join(`T${i}`, `p${i + 1}`, `p${a % (i + 1)}`, rating)),
					...spec.loops.map(({ a, b, rating }, i) => join(`L${i}`, `p${a}`, `p${b}`, rating)),
					...spec.returns.map(({ a, rating }, i) => join(`R${i}`, `n${i + 1}`, `n${a % (i + 1)}`, isFused ? rating : null)),
					...spec.returnLoops.map(({ a, b }, i) => wire(`M${i}`, `n${a}`, `n${b}`))
				],
				loads: spec.loads.map(({ p, n, odd }, i) =>
					load(`D${i}`, odd === 0 ? `x${p % 2}` : odd === 1 ? `n${p}` : `p${p}`, odd === 2 ? `x${n % 2}` : odd === 3 ? `p${n}` : `n${n}`, {
						watts: 1
					})
				),
				sources: spec.sources.map(({ p, n, maxA, fedBy, blocksReverse }, i) =>
					source(`S${i}`, `p${p}`, `n${n}`, { maxA, setV: 14, blocksReverse, fedBy: fedBy && spec.loads.length > 0 ? 'D0' : null })
				)
			});
		});
});

/** Lower layer: back to the supplies. Upper layer: from them, through fuses and shorted loads. */
function reference(net: Network, id: string, end: 'from' | 'to'): number {
	const { nodeCount, poles } = net;
	const up = (node: number): number => node + nodeCount;
	const layered = (batteryArcs: readonly { from: number; to: number; capacity: number }[]): number => {
		const arcs = net.branches
			.filter(({ index }) => index !== net.branchOfConductor.get(id))
			.flatMap(({ a, b, device }) => {
				const capacity = device?.ratingA ?? HUGE;
				return [
					{ from: a, to: b, capacity },
					{ from: b, to: a, capacity },
					{ from: up(a), to: up(b), capacity },
					{ from: up(b), to: up(a), capacity }
				];
			});
		for (const { positive, negative } of [...net.loads, ...net.sources])
			arcs.push({ from: up(positive), to: up(negative), capacity: HUGE });
		for (const { positive, negative, maxA, blocksReverse, fedBy } of net.sources) {
			arcs.push({ from: negative, to: up(positive), capacity: maxA });
			if (!blocksReverse && fedBy !== null) arcs.push({ from: up(positive), to: up(net.loads[fedBy]!.positive), capacity: HUGE });
		}
		const { from, to } = net.nodeOfEnd.get(id)!;
		const [entry, exit] = end === 'from' ? [from, to] : [to, from];
		return edmondsKarp(2 * nodeCount, [...arcs, ...batteryArcs], exit, up(entry));
	};
	const driving = net.batteries.map(({ positive, negative }) => ({
		from: poles[negative] === 'positive' ? up(negative) : negative,
		to: up(positive),
		capacity: HUGE
	}));
	const charged = net.batteries.map(({ positive, negative }) => ({ from: up(positive), to: up(negative), capacity: HUGE }));
	const amps = Math.max(layered(driving), layered(charged));
	return amps >= HUGE ? Infinity : amps;
}

test('let-through of returns equals the textbook maximum flow, and stays within its bound', () => {
	fc.assert(
		fc.property(anySystem, (net) => {
			for (const [id, { from, to }] of net.nodeOfEnd) {
				if (from === to || net.poles[from] !== 'negative') continue;
				const protection = protectionOf(net, id);
				for (const end of ['from', 'to'] as const) {
					const { currentA, limitedBy } = protection[end];
					expect(currentA).toBeCloseTo(reference(net, id, end), 6);
					if (currentA === Infinity) continue;
					// A fuse in a return may limit the current twice, on its way in and on its way back; it is named once.
					const namedA = limitedBy.reduce((sum, device) => sum + device.currentA, 0);
					const inReturns = net.branches.some(({ a, device }) => device !== null && net.poles[a] === 'negative');
					expect(namedA).toBeLessThanOrEqual(currentA + 1e-6);
					expect((inReturns ? 2 : 1) * namedA).toBeGreaterThanOrEqual(currentA - 1e-6);
				}
				expect(letThroughBound(net, id)).toBeGreaterThanOrEqual(protection.currentA - 1e-9);
			}
		}),
		{ numRuns: 250 }
	);
});

test('in a typical system as well, on both poles', () => {
	const net = buildNetwork(largeDiagram(80));
	for (const [id, { from, to }] of net.nodeOfEnd) {
		if (net.poles[from] === 'negative') {
			expect(protectionOf(net, id).from.currentA).toBe(reference(net, id, 'from'));
			expect(protectionOf(net, id).to.currentA).toBe(reference(net, id, 'to'));
		}
		expect(letThroughBound(net, id)).toBeGreaterThanOrEqual(protectionOf(net, id).currentA);
		expect(from).not.toBe(to);
	}
});
