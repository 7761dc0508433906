import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Network } from '#core/network';
import { solveCase, type OperatingPoint } from '#core/solver';
import { denseVoltages } from '../../support/dense.ts';
import { allOn, battery, load, network, wire } from '../../support/network.ts';
import { anyNetwork } from '../../support/random-network.ts';

// Many random systems: a busy machine must not make them fail.
vi.setConfig({ testTimeout: 60_000 });

const RUNS = { numRuns: 200 };

function expectSameVoltages(net: Network, point: OperatingPoint, toleranceV: number): void {
	const reference = net.batteries[0]!.negative;
	const expected = denseVoltages(net, reference, point.loadA);
	expected.forEach((volts, node) => expect(Math.abs(point.nodeV[node]! - point.nodeV[reference]! - volts)).toBeLessThan(toleranceV));
}

/** Watts taken by everything in the network; sources count negative. */
const powerBalanceW = (net: Network, { nodeV, branchA, batteryA, sourceA, loadA }: OperatingPoint): number => {
	const across = (positive: number, negative: number): number => nodeV[positive]! - nodeV[negative]!;
	return (
		net.branches.reduce((sum, { index, a, b }) => sum + across(a, b) * branchA[index]!, 0) -
		net.batteries.reduce((sum, { index, positive, negative }) => sum + across(positive, negative) * batteryA[index]!, 0) -
		net.sources.reduce((sum, { index, positive, negative }) => sum + across(positive, negative) * sourceA[index]!, 0) +
		net.loads.reduce((sum, { index, positive, negative }) => sum + across(positive, negative) * loadA[index]!, 0)
	);
};

describe('against ml-matrix (dense LU of the nodal matrix)', () => {
	test('resistive and constant-current loads: the same voltages within 1e-8 V', () => {
		fc.assert(
			fc.property(anyNetwork({ loads: ['ohms', 'amps'] }), (net) => {
				const point = solveCase(net, 'on', allOn());
				if (point.status === 'solved') expectSameVoltages(net, point, 1e-8);
			}),
			RUNS
		);
	});

	test('constant-power loads: the voltages are those of the currents found, and each takes its power', () => {
		fc.assert(
			fc.property(anyNetwork({ loads: ['ohms', 'amps', 'watts'] }), (net) => {
				const point = solveCase(net, 'on', allOn());
				if (point.status === 'collapsed') return;
				expectSameVoltages(net, point, 1e-8);
				for (const { index, draw } of net.loads) {
					// Where the others leave next to nothing across a load, it is not fed and must draw nothing.
					if (!point.loadFed[index]) expect(point.loadA[index]).toBe(0);
					// Nor where they hold it the wrong way round: it does not work backwards.
					else if (draw.kind !== 'resistance' && point.loadV[index]! <= 0) expect(point.loadA[index]).toBe(0);
					else if (draw.kind === 'power') expect(point.loadV[index]! * point.loadA[index]!).toBeCloseTo(draw.watts, 8);
					else if (draw.kind === 'current') expect(point.loadA[index]).toBe(draw.amps);
				}
			}),
			RUNS
		);
	});
});

describe('laws', () => {
	const anySystem = anyNetwork({ loads: ['ohms', 'amps', 'watts'], sources: true });

	test("Kirchhoff's current law holds at every node", () => {
		fc.assert(
			fc.property(anySystem, (net) => {
				expect(solveCase(net, 'on', allOn()).residualA).toBeLessThan(1e-6);
			}),
			RUNS
		);
	});

	test('what the supplies give, the rest takes (Tellegen)', () => {
		fc.assert(
			fc.property(anySystem, (net) => {
				const point = solveCase(net, 'on', allOn());
				if (point.status === 'solved') expect(Math.abs(powerBalanceW(net, point))).toBeLessThan(1e-5);
			}),
			RUNS
		);
	});

	test('a source gives between nothing and its limit, and never raises its terminals above its set voltage', () => {
		fc.assert(
			fc.property(anySystem, (net) => {
				const { status, sourceA, nodeV } = solveCase(net, 'on', allOn());
				if (status === 'collapsed') return;
				for (const { index, maxA, setV, positive, negative } of net.sources) {
					const volts = nodeV[positive]! - nodeV[negative]!;
					expect(sourceA[index]).toBeGreaterThanOrEqual(0);
					expect(sourceA[index]).toBeLessThanOrEqual(maxA * (1 + 1e-5));
					if (sourceA[index]! > 1e-5) expect(volts).toBeLessThanOrEqual(setV + 1e-8);
					if (sourceA[index]! < maxA * (1 - 1e-5)) expect(volts).toBeGreaterThanOrEqual(setV - 1.1e-3);
				}
			}),
			RUNS
		);
	});

	test('more load never raises a load voltage, where supplies and loads share one return', () => {
		fc.assert(
			fc.property(anyNetwork({ loads: ['watts'], oneReturn: true }), fc.double({ min: 0, max: 1, noNaN: true }), (net, share) => {
				const [less, more] = [solveCase(net, 'a', allOn({ loads: share })), solveCase(net, 'b', allOn())];
				if (more.status === 'collapsed') return;
				expect(less.status).toBe('solved');
				less.loadV.forEach((volts, i) => expect(volts).toBeGreaterThanOrEqual(more.loadV[i]! - 1e-9));
			}),
			RUNS
		);
	});
});

test('collapse is found where plain rounds with the dense library find it, and only there', () => {
	/** The textbook's patient way: start with loads off, repeat until nothing changes or a voltage falls to zero. */
	function patiently(net: Network): 'solved' | 'collapsed' | 'undecided' {
		const reference = net.batteries[0]!.negative;
		const across = (nodeV: Float64Array) => net.loads.map(({ positive, negative }) => nodeV[positive]! - nodeV[negative]!);
		let volts = across(denseVoltages(net, reference, new Float64Array(net.loads.length)));
		for (let round = 0; round < 400; round++) {
			const loadA = Float64Array.from(net.loads, ({ draw }, i) => (draw.kind === 'power' ? draw.watts / volts[i]! : 0));
			const next = across(denseVoltages(net, reference, loadA));
			if (next.some((v) => v <= 0)) return 'collapsed';
			if (next.every((v, i) => Math.abs(v - volts[i]!) < 1e-7)) return 'solved';
			volts = next;
		}
		return 'undecided';
	}

	const counts = { solved: 0, collapsed: 0, undecided: 0 };
	fc.assert(
		fc.property(anyNetwork({ leastOhm: 0.2, mostOhm: 3, loads: ['watts'], most: 6 }), (net) => {
			const expected = patiently(net);
			counts[expected]++;
			if (expected !== 'undecided') expect(solveCase(net, 'on', allOn()).status).toBe(expected);
		}),
		RUNS
	);
	expect(Math.min(counts.solved, counts.collapsed)).toBeGreaterThan(5);
});

test('a conductance spread of 1e8 costs no precision', () => {
	// A ladder can be worked out from its far end by sums and products alone, so its exact answer is known.
	const ohm = fc.double({ min: -6, max: 2, noNaN: true }).map((exponent) => 10 ** exponent);
	fc.assert(
		fc.property(fc.array(fc.record({ series: ohm, shunt: ohm }), { minLength: 1, maxLength: 30 }), (rungs) => {
			const net = network({
				batteries: [battery('B', 'n0', '0', { emfV: 12, resistanceOhm: 0.01 })],
				branches: rungs.map(({ series }, i) => wire(`W${i}`, `n${i}`, `n${i + 1}`, series)),
				loads: rungs.map(({ shunt }, i) => load(`L${i}`, `n${i + 1}`, '0', { ohms: shunt }))
			});
			const point = solveCase(net, 'on', allOn());

			let [volts, amps] = [1, 0];
			const scaled = rungs
				.toReversed()
				.map(({ series, shunt }) => {
					const here = volts;
					amps += volts / shunt;
					volts += amps * series;
					return here;
				})
				.toReversed();
			const scale = 12 / (volts + amps * 0.01);
			scaled.forEach((v, i) => expect(Math.abs(point.loadV[i]! / (v * scale) - 1)).toBeLessThan(1e-11));
		}),
		RUNS
	);
});
