/**
 * A short that is left to itself. Times of the example systems are held against sums by hand: current over rating, read
 * on the family's gates by straight lines on logarithmic scales. The gates are from memory or common practice: the
 * hand sums check the reading of them, not the gates.
 */
import { describe, expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { darkLoads, shortStory, type ShortStory } from '#core/faults';
import { buildNetwork } from '#core/network';
import { adiabaticTimeS, temperatureAfterC } from '#core/tables';
import { battery, fuse, load, network, source, wire, type TestNetwork } from '../../support/network.ts';
import { pagemoorAfter, pagemoorBefore } from '../../support/examples/pagemoor.ts';
import { ridgePostAfter } from '../../support/examples/ridge-post.ts';

const blade = (part: string, a: string, b: string, ratingA: number) => {
	const branch = fuse(part, a, b, ratingA);
	return { ...branch, device: { ...branch.device!, family: 'blade-regular' as const } };
};

const dropped = (net: TestNetwork, at: string, to: string, shortOhm = 0): ShortStory =>
	shortStory(net, {}, { at: net.node(at), to: net.node(to), shortOhm, condition: 'greatest', startC: () => 30 });

/** 12 V behind 10 mΩ, a 20 A blade fuse, a lamp at the end of a wire that lets 100 A into a short. */
const oneCircuit = (): TestNetwork =>
	network({
		batteries: [battery('B', '+', '0', { emfV: 12, resistanceOhm: 0.01 })],
		branches: [blade('F', '+', 'f', 20), wire('W', 'f', 'l', 0.12 - 0.01 - 0.08 / 20)],
		loads: [load('L', 'l', '0', { watts: 10 }), load('M', '+', '0', { watts: 10 })]
	});

describe('one fuse', () => {
	test('opens within its band at the current of the short, and the lamp behind it is dark, the other not', () => {
		const story = dropped(oneCircuit(), 'l', '0');
		// 12 V / 120 mΩ = 100 A: five times 20 A. Blade gates 3.5 times 0.04–0.5 s, 6 times 0.02–0.1 s.
		const at = (first: number, last: number): number => first * (last / first) ** (Math.log(5 / 3.5) / Math.log(6 / 3.5));
		expect(story.runs.middle[0]!.currentA).toBeCloseTo(100, 9);
		expect(story.openings).toHaveLength(1);
		expect(story.openings[0]!.earliestS).toBeCloseTo(at(0.04, 0.02), 9);
		expect(story.openings[0]!.latestS).toBeCloseTo(at(0.5, 0.1), 9);
		expect(story.openings[0]!.mayBeFirst).toBe(true);
		expect(story.clears).toBe(true);
		const last = story.runs.latest.at(-1)!;
		expect(last.currentA).toBe(0);
		expect(last.dark).toEqual([0]);
	});

	test('a chafed wire of 0.5 Ω draws less than the rating: nothing opens, and that is said', () => {
		const story = dropped(oneCircuit(), 'l', '0', 0.5);
		// 12 V / 620 mΩ = 19.35 A.
		expect(story.runs.soonest).toHaveLength(1);
		expect(story.runs.soonest[0]!.currentA).toBeCloseTo(12 / 0.62, 9);
		expect(story.runs.soonest[0]!.toS).toBe(Infinity);
		expect(story.openings).toEqual([]);
		expect(story.clears).toBe(false);
		// 12 V less 19.35 A over what lies before the lamp: 9.7 V are left, and it burns on.
		expect(story.runs.soonest[0]!.dark).toEqual([]);
	});

	test('between holding and the first gate it may open, and need not', () => {
		// 12 V / 0.5 Ω = 24 A: 1.2 times; blade fuses hold 1.1 times and have their first gate at 1.35.
		const story = dropped(oneCircuit(), 'l', '0', 0.38);
		expect(story.openings[0]).toMatchObject({ earliestS: 0.75, latestS: Infinity });
		expect(story.clears).toBe(false);
	});

	test('a breaker has no curve here: it is named, and no time is claimed', () => {
		const net = network({
			batteries: [battery('B', '+', '0', { emfV: 12, resistanceOhm: 0.01 })],
			branches: [fuse('CB', '+', 'l', 20)],
			loads: [load('L', 'l', '0', { watts: 10 })]
		});
		const story = dropped(net, 'l', '0');
		expect(story.withoutCurve).toEqual([0]);
		expect(story.openings).toEqual([]);
		expect(story.clears).toBe(false);
	});
});

describe('several fuses', () => {
	test('two strings: when the first has opened the second carries all, and has been heating since the start', () => {
		const strings = ['a', 'b'].flatMap((id) => [battery(`B${id}`, `${id}+`, '0', { emfV: 12, resistanceOhm: 0.02 })]);
		const net = network({
			batteries: strings,
			branches: [blade('Fa', 'a+', '+', 20), blade('Fb', 'b+', '+', 30), wire('W', '+', 'l', 0.1)],
			loads: [load('L', 'l', '0', { watts: 10 })]
		});
		const [first, second, last] = dropped(net, 'l', '0').runs.latest;
		// Kirchhoff, with R = 0.08 V / rating for each fuse: strings of 24 and 22.67 mΩ, then 100 mΩ.
		const [ra, rb] = [0.02 + 0.08 / 20, 0.02 + 0.08 / 30];
		const totalA = 12 / (0.1 + (ra * rb) / (ra + rb));
		expect(first!.currentA).toBeCloseTo(totalA, 9);
		expect(first!.deviceA.get(0)!).toBeCloseTo((totalA * rb) / (ra + rb), 9);
		expect(first!.opens).toBe(0);
		expect(second!.currentA).toBeCloseTo(12 / (0.1 + rb), 9);
		expect(second!.opens).toBe(1);
		// Latest blade curve, straight on logarithmic scales between its gates.
		const latest = (multiple: number): number => {
			const rows = [
				[1.35, 600],
				[1.6, 50],
				[2, 5],
				[3.5, 0.5],
				[6, 0.1]
			] as const;
			const i = rows.findIndex(([m]) => m >= multiple);
			const [[m0, t0], [m1, t1]] = [rows[i - 1]!, rows[i]!];
			return t0 * (t1 / t0) ** (Math.log(multiple / m0) / Math.log(m1 / m0));
		};
		const firstS = latest(first!.deviceA.get(0)! / 20);
		const used = firstS / latest(first!.deviceA.get(1)! / 30);
		expect(first!.toS).toBeCloseTo(firstS, 9);
		expect(second!.toS).toBeCloseTo(firstS + (1 - used) * latest(second!.deviceA.get(1)! / 30), 9);
		expect(last!.currentA).toBe(0);
		expect(last!.dark).toEqual([0]);
	});

	test('one behind the other with bands that overlap: either may be first, and the farther need not open', () => {
		const net = network({
			batteries: [battery('B', '+', '0', { emfV: 12, resistanceOhm: 0.01 })],
			branches: [blade('far', '+', 'bus', 30), blade('near', 'bus', 'l', 25), wire('W', 'l', 'e', 0.1)],
			loads: [load('L', 'e', '0', { watts: 10 })]
		});
		const story = dropped(net, 'e', '0');
		const of = (index: number) => story.openings.find((opening) => opening.index === index)!;
		expect(of(0).mayBeFirst).toBe(true);
		expect(of(1).mayBeFirst).toBe(true);
		expect(of(0).latestS).toBe(Infinity);
		// The quick run of the farther one spares the nearer, which therefore need not open either.
		expect(of(1).latestS).toBe(Infinity);
		expect(story.clears).toBe(true);
	});
});

describe('example systems against hand sums', () => {
	function drop(diagram: Diagram, at: string): { story: ShortStory; of: (part: string) => ShortStory['openings'][number] | undefined } {
		const net = buildNetwork(diagram);
		const node = net.nodeOf.get(at)!;
		const partner = net.loads.find(({ positive }) => positive === node)!.negative;
		const story = shortStory(net, diagram.conductors, { at: node, to: partner, shortOhm: 0, condition: 'greatest', startC: () => 30 });
		const of = (link: string) => story.openings.find(({ index }) => index === net.branchOfLink.get(link));
		return { story, of };
	}
	const within = (found: number, byHand: number, share: number): void => {
		expect(Math.abs(found / byHand - 1), `${found} s against ${byHand} s`).toBeLessThan(share);
	};

	test('radio of the trailer: 923 A are 23 times 40 A: 7 to 68 ms; the string fuses at 461 A hold for seconds', () => {
		const { story, of } = drop(ridgePostAfter(), 'RAD.pos');
		// The current is within 10 % of the hand sum, and I²t makes 20 % of that.
		within(of('D.fuse-3')!.earliestS, 0.0068, 0.2);
		within(of('D.fuse-3')!.latestS, 0.068, 0.2);
		expect(of('FB1.fuse')).toBeUndefined();
		expect(story.clears).toBe(true);
	});

	test('inverter of the trailer behind Class T string fuses: 5 to 19 ms, its own fuse 10 to 105 ms: all may go dark', () => {
		const { story, of } = drop(ridgePostAfter(), 'INV.pos');
		within(of('FB1.fuse')!.earliestS, 0.005, 0.25);
		expect(of('FB1.fuse')!.mayBeFirst).toBe(true);
		within(of('D.fuse-1')!.earliestS, 0.01, 0.25);
		expect(of('D.fuse-1')!.latestS).toBe(Infinity);
		expect(story.runs.soonest.at(-1)!.dark.length).toBeGreaterThan(3);
	});

	test('lift of the library: 12 to 118 ms against a string fuse from 68 ms: either may open', () => {
		const { of } = drop(pagemoorAfter(), 'LIFT.pos');
		within(of('D.fuse-2')!.earliestS, 0.012, 0.25);
		within(of('FS1.fuse')!.earliestS, 0.068, 0.25);
		expect(of('D.fuse-2')!.mayBeFirst).toBe(true);
	});

	test('reading lamps of the library on a 40 A fuse: 123 A take 0.4 to 6.4 s', () => {
		const { of } = drop(pagemoorBefore(), 'LAMPS.pos');
		within(of('D.fuse-6')!.earliestS, 0.4, 0.3);
		within(of('D.fuse-6')!.latestS, 6.4, 0.3);
	});
});

describe('heat', () => {
	// IEC 60949 and IEC 60364-5-54 Table 54.2: PVC copper starts at 70 °C, ends at 160 °C with k = 115; here 10 mm² at 1,000 A.
	test('a conductor that takes (kS)² ends at the insulation’s limit', () => {
		const heatA2S = 1000 ** 2 * adiabaticTimeS(10, 1000, 115);
		expect(Math.abs(temperatureAfterC(70, heatA2S, 10) - 160)).toBeLessThan(1);
	});
});

describe('dark', () => {
	test('a converter’s loads go with its input', () => {
		const net = network({
			batteries: [battery('B', '+', '0')],
			branches: [blade('F', '+', 'in', 20), wire('W', 'out', 'l', 0.01)],
			loads: [load('C', 'in', '0', { watts: 1 }, { followsSource: 'C' }), load('L', 'l', '0', { watts: 1 })],
			sources: [source('C', 'out', '0', { maxA: 10, setV: 12, fedBy: 'C', alwaysOn: true })]
		});
		expect(darkLoads(net, new Set())).toEqual([]);
		expect(darkLoads(net, new Set([0]))).toEqual([0, 1]);
	});

	test('a charger alone keeps nothing alive whose battery is cut off, but feeds a rail that never had one', () => {
		const net = network({
			batteries: [battery('B', 'b', '0')],
			branches: [blade('F', 'b', '+', 20)],
			loads: [load('L', '+', '0', { watts: 1 }), load('M', 'm', '0', { watts: 1 })],
			sources: [source('C', '+', '0', { maxA: 10, setV: 14 }), source('D', 'm', '0', { maxA: 10, setV: 14 })]
		});
		expect(darkLoads(net, new Set([0]))).toEqual([0]);
	});

	test('a load between the ends of a series string lives while both batteries are there', () => {
		const net = network({
			batteries: [battery('A', '+', 'm'), battery('B', 'n', '0')],
			branches: [blade('link', 'm', 'n', 20)],
			loads: [load('L', '+', '0', { watts: 1 })]
		});
		expect(darkLoads(net, new Set())).toEqual([]);
		expect(darkLoads(net, new Set([0]))).toEqual([0]);
	});
});
