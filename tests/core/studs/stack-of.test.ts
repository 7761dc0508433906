import { describe, expect, test } from 'vitest';
import { stackOf, stacksOf } from '#core/studs';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';

/** 4/0, 2/0 and 6 AWG lugs and a fuse block on an M8 end stud with 20 mm of thread. */
const endStud = (options: CircuitOptions = {}) =>
	circuit(
		{ d: ['fused-bus', { endUsableMm: 20 }], a: ['battery', { stud: 'M10' }], f: ['fuse-block'] },
		[
			['a.pos', 'd.L', { gauge: '4/0' }],
			['a.pos', 'd.L', { gauge: '2/0' }],
			['a.pos', 'd.L', { gauge: '6' }],
			['a.neg', 'd.R', { gauge: '12', label: ' ' }]
		],
		{ mounts: { f: 'd.L' }, ...options }
	);

describe('a stack', () => {
	test('is as high as what is in it', () => {
		// Pads 4.8, 3.8 and 2.0, plate 3.0: common practice. Washer ISO 7089 M8 1.6, spring washer DIN 127 M8 2.0, nut ISO 4032 M8 6.8.
		const stack = stackOf(endStud({ stacks: { 'd.L': ['W1', 'W2', 'block f', 'W3'] } }), 'd.L')!;
		expect(stack.layers.map(({ thicknessMm }) => thicknessMm)).toEqual([4.8, 3.8, 3, 2, 1.6, 2, 6.8]);
		expect(stack.layers.map(({ bottomMm }) => Number(bottomMm.toFixed(6)))).toEqual([0, 4.8, 8.6, 11.6, 13.6, 15.2, 17.2]);
		expect(stack.heightMm).toBeCloseTo(17.2);
		expect(stack.threadLeftMm).toBeCloseTo(20 - 17.2 - 6.8);
		expect(stack.terminalCount).toBe(4);
		expect(stack.hardwareAssumed).toBe(true);
	});

	test('reads as a sentence', () => {
		expect(stackOf(endStud({ mounts: {} }), 'd.L')!.sentence).toBe(
			'M8 end stud L, from the seat: 4/0 AWG lug of W1; 2/0 AWG lug of W2; 6 AWG lug of W3; washer; lock washer; nut; torque 9 to 12 N·m; thread ends 1 mm below the top of the nut'
		);
		expect(stackOf(endStud(), 'd.R')!.sentence).toBe(
			'M8 end stud R, from the seat: 12 AWG ring of unlabelled conductor; washer; lock washer; nut; torque 9 to 12 N·m; thread left 8.6 mm'
		);
		expect(stackOf(endStud(), 'a.neg')!.sentence).toMatch(/^M10 stud \(−\), from the seat: /);
	});

	test('keeps the hardware that is drawn and assumes only what is missing above it', () => {
		const drawn = (items: string[]) => stackOf(endStud({ mounts: {}, stacks: { 'd.L': items } }), 'd.L')!;
		const labels = (items: string[]) => drawn(items).layers.map(({ item }) => item.kind);
		expect(labels(['W1', 'W2', 'W3', 'washer', 'nut'])).toEqual(['lug', 'lug', 'lug', 'washer', 'nut']);
		expect(drawn(['W1', 'W2', 'W3', 'washer', 'nut']).hardwareAssumed).toBe(false);
		expect(labels(['W1', 'W2', 'W3', 'washer'])).toEqual(['lug', 'lug', 'lug', 'washer', 'lock-washer', 'nut']);
		expect(labels(['W1', 'nut', 'W2', 'W3'])).toEqual(['lug', 'nut', 'lug', 'lug', 'washer', 'lock-washer', 'nut']);
	});

	test('lets current through copper and not through hardware', () => {
		const stack = stackOf(endStud({ stacks: { 'd.L': ['W1', 'washer', 'W2', 'W3', 'nut'] } }), 'd.L')!;
		expect(stack.layers.map(({ conducts }) => conducts)).toEqual([true, false, true, true, true, false]);
	});

	test('measures inch hardware by its own standard', () => {
		// ASME B18.2.2: 5/16 in nut 6.744 mm.
		const bus = circuit({ d: ['positive-bus', { thread: '5/16' }], l: ['load'] }, [['d.1', 'l.pos']]);
		const stack = stackOf(bus, 'd.1')!;
		expect(stack.layers.at(-1)!.thicknessMm).toBe(6.744);
		expect(stack.sentence).toMatch(/^5\/16 in stud 1, from the seat: 6 AWG lug of W1; /);
	});
});

describe('other places', () => {
	test('a clamp holds conductors side by side', () => {
		const clamp = stackOf(circuit({ d: ['positive-bus'], l: ['load'] }, [['d.1', 'l.pos', { gauge: '14' }]]), 'l.pos')!;
		expect(clamp).toMatchObject({ heightMm: 0, threadLeftMm: null, terminalCount: 1, hardwareAssumed: false });
		expect(clamp.sentence).toBe('Clamp +: 14 AWG of W1');
	});

	test('nothing is on an empty or unknown stud', () => {
		const diagram = endStud();
		for (const key of ['d.2', 'd.nowhere', 'nobody.L', 'constructor.name']) expect(stackOf(diagram, key)).toBeUndefined();
	});

	test('all stacks are found, a fuse on its own post included', () => {
		const keys = stacksOf(endStud()).map(({ key }) => key);
		expect(keys.sort()).toEqual(['a.neg', 'a.pos', 'd.L', 'd.R', 'f.post']);
	});
});
