import { describe, expect, test } from 'vitest';
import { holeFit, obstaclesOf, planView, stackOf, underUsualCover } from '#core/studs';
import { circuit } from '../../support/circuit.ts';

const onEndStud = (...gauges: string[]) =>
	circuit(
		{ b: ['battery', {}, { at: { x: -400, y: 0 } }], d: ['fused-bus', {}, { at: { x: 0, y: 0 } }] },
		gauges.map((gauge) => ['b.pos', 'd.L', { gauge }] as const)
	);

/** What keeps the cover from closing over an end stud of a usual bus. */
function underCover(...gauges: string[]) {
	const diagram = onEndStud(...gauges);
	const stack = stackOf(diagram, 'd.L')!;
	return obstaclesOf(diagram, { ...stack, terminal: underUsualCover(stack.terminal) }).map(({ kind }) => kind);
}

describe('under the usual cover of an end stud', () => {
	// Common practice, no source: 6 AWG and 2 AWG leads fit, 2 AWG is about the largest, 1/0 AWG and larger belong on a main position.
	test.each(['6', '4', '2'])('%s AWG fits', (gauge) => {
		expect(underCover(gauge)).toEqual([]);
	});

	test.each(['1/0', '2/0', '3/0', '4/0'])('%s AWG does not', (gauge) => {
		expect(underCover(gauge)).toContain('cable-too-thick');
	});

	// Common practice, no source: two leads on one covered end stud need an adapter.
	test.each([
		['6', '6'],
		['2', '6'],
		['2', '2']
	])('two leads, %s and %s AWG, do not', (...gauges) => {
		expect(underCover(...gauges)).toContain('cover-does-not-close');
	});
});

describe('the plan', () => {
	test('gives the room a cable needs', () => {
		// Lug 55, straight run 20, bend 4 × 16.3: 140 mm to a wall (common practice).
		const diagram = onEndStud('2/0');
		const [lug] = planView(diagram, stackOf(diagram, 'd.L')!).lugs;
		expect(lug).toMatchObject({ conductor: 'W1', end: 'to', side: 'west', padWidthMm: 24.2, passesSlot: null });
		expect(lug!.roomMm).toBeCloseTo(140, 0);
	});

	test('measures pads against the pitch', () => {
		// Two 4/0 pads of 30.2 mm on a pitch of 30 mm overlap by 0.2 mm.
		const diagram = circuit({ p: ['positive-bus'], b: ['battery'], c: ['battery'] }, [
			['b.pos', 'p.1', { gauge: '4/0' }],
			['c.pos', 'p.2', { gauge: '4/0' }]
		]);
		const { neighbours } = planView(diagram, stackOf(diagram, 'p.1')!);
		expect(neighbours).toHaveLength(1);
		expect(neighbours[0]).toMatchObject({ stud: 'p.2', pitchMm: 30 });
		expect(neighbours[0]!.padsMm).toBeCloseTo(30.2);
		expect(neighbours[0]!.gapMm).toBeCloseTo(-0.2);
	});

	test('fans lugs that leave by one side', () => {
		const one = onEndStud('2');
		const two = onEndStud('2', '6');
		expect(planView(one, stackOf(one, 'd.L')!).fanDeg).toBeNull();
		// 2·asin(9.55/30).
		expect(planView(two, stackOf(two, 'd.L')!).fanDeg).toBeCloseTo(37.1, 1);
	});

	test('says whether a given cover closes', () => {
		const covered = (gauge: string) =>
			circuit({ b: ['battery'], d: ['fused-bus', { coverHeightMm: 16, coverSlotMm: 13 }] }, [['b.pos', 'd.L', { gauge }]]);
		const closes = (gauge: string) => planView(covered(gauge), stackOf(covered(gauge), 'd.L')!).cover?.closes;
		expect(closes('2')).toBe(true);
		expect(closes('2/0')).toBe(false);
		expect(planView(onEndStud('2'), stackOf(onEndStud('2'), 'd.L')!).cover).toBeNull();
	});

	test('holds plates against their stud', () => {
		const diagram = circuit({ d: ['fused-bus', { endThread: 'M10' }], f: ['fuse-block'] }, [], { mounts: { f: 'd.L' } });
		expect(planView(diagram, stackOf(diagram, 'd.L')!).blocks[0]!.hole).toMatchObject({ verdict: 'too-small' });
	});
});

describe('a hole on a stud', () => {
	// ISO 273 fine holes: 8.4 for M8, 10.5 for M10. The limits are common practice.
	test.each([
		['M8', 'M8', 'fits'],
		['5/16', 'M8', 'fits'],
		['M10', 'M8', 'too-loose'],
		['M8', 'M10', 'too-small']
	] as const)('%s on %s: %s', (hole, stud, verdict) => {
		expect(holeFit(hole, stud).verdict).toBe(verdict);
	});
});

describe('an adapter post on a covered end stud', () => {
	// Common practice, no source: two leads on one covered negative end stud do not fit; on an adapter they do.
	const diagram = circuit(
		{
			b: ['battery', {}, { at: { x: -400, y: 0 } }],
			n: ['negative-bus', {}, { at: { x: 0, y: 0 } }],
			a: ['adapter-post', { pole: 'negative' }]
		},
		[
			['b.neg', 'a.1', { gauge: '6' }],
			['b.neg', 'a.2', { gauge: '2' }]
		],
		{ mounts: { a: 'n.1' } }
	);
	const under = (key: string) => {
		const stack = stackOf(diagram, key)!;
		return obstaclesOf(diagram, { ...stack, terminal: underUsualCover(stack.terminal) });
	};

	test('lets the cover close over its foot', () => {
		expect(under('n.1')).toEqual([]);
		expect(stackOf(diagram, 'n.1')).toMatchObject({ terminalCount: 1, layers: [{ label: 'adapter post A', thicknessMm: 3 }, {}, {}, {}] });
	});

	test.each(['a.1', 'a.2'])('takes one lead on %s', (face) => {
		const stack = stackOf(diagram, face)!;
		expect(obstaclesOf(diagram, stack)).toEqual([]);
		expect(stack.terminalCount).toBe(1);
	});
});
