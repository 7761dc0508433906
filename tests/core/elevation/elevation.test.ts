import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import type { Diagram } from '#core/diagram';
import { drawElevation, type Elevation, type ElevationRoom } from '#core/elevation';
import type { Box } from '#core/geometry';
import { buildStudy, stackCurrents } from '#core/rules';
import { jointsOf, stackOf } from '#core/studs';
import { PLAIN_READER, printFor } from '#core/units';
import { circuit } from '../../support/circuit.ts';

const NARROW: ElevationRoom = { widthEm: 26, heightEm: 19, rowEm: 2.2, gripEm: 1.7 };
const WIDE: ElevationRoom = { widthEm: 78, heightEm: 32 };

function drawn(diagram: Diagram, key: string, room = NARROW): Elevation {
	const stack = stackOf(diagram, key)!;
	const joints = jointsOf(stack, stackCurrents(buildStudy(diagram), stack));
	return drawElevation({ diagram, stack, joints, marks: [], insulation: () => 'conductor:red' }, room);
}

const overlap = (a: Box, b: Box): boolean =>
	a.minX < b.maxX - 1e-6 && b.minX < a.maxX - 1e-6 && a.minY < b.maxY - 1e-6 && b.minY < a.maxY - 1e-6;

const GAUGES = ['16', '12', '10', '8', '6', '4', '2', '1/0', '2/0', '4/0', '16 mm²', '95 mm²'];

/** Any stack on a bus stud, a battery post, or a block's own post. */
const anyStack = fc
	.record({
		gauges: fc.array(fc.constantFrom(...GAUGES), { minLength: 1, maxLength: 6 }),
		block: fc.boolean(),
		thread: fc.constantFrom('M6', 'M8', 'M10', '5/16'),
		cover: fc.option(fc.integer({ min: 8, max: 60 })),
		hardware: fc.subarray(['washer', 'lock-washer', 'nut']),
		away: fc.constantFrom({ x: -600, y: 0 }, { x: 600, y: 0 }, { x: 0, y: 700 })
	})
	.map(({ gauges, block, thread, cover, hardware, away }) =>
		circuit(
			{
				b: ['battery', {}, { at: away }],
				d: ['fused-bus', { endThread: thread, coverHeightMm: cover }, { at: { x: 0, y: 0 } }],
				f: ['fuse-block', { plateHole: thread }]
			},
			gauges.map((gauge) => ['b.pos', 'd.L', { gauge }] as const),
			{
				mounts: block ? { f: 'd.L' } : {},
				stacks: { 'd.L': [...gauges.map((_, index) => `W${index + 1}`), ...(block ? ['block f'] : []), ...hardware] }
			}
		)
	);

describe('the elevation of any stack', () => {
	afterEach(() => printFor(() => PLAIN_READER));

	test.each([
		['narrow', NARROW, PLAIN_READER],
		['wide', WIDE, PLAIN_READER],
		['narrow, in inches', NARROW, { ...PLAIN_READER, short: 'in' as const }],
		['wide, in inches', WIDE, { ...PLAIN_READER, short: 'in' as const }]
	])('writes nothing over something else, nor beside the picture (%s)', (_, room, reader) => {
		printFor(() => reader);
		fc.assert(
			fc.property(anyStack, (diagram) => {
				const { words, box } = drawn(diagram, 'd.L', room);
				words.forEach((word, index) => {
					for (const other of words.slice(index + 1)) expect(overlap(word, other), JSON.stringify([word, other])).toBe(false);
					expect(word.minX).toBeGreaterThanOrEqual(box.minX - 1e-6);
					expect(word.maxX).toBeLessThanOrEqual(box.maxX + 1e-6);
					expect(word.minY).toBeGreaterThanOrEqual(box.minY - 1e-6);
					expect(word.maxY).toBeLessThanOrEqual(box.maxY + 1e-6);
				});
			}),
			{ numRuns: 60 }
		);
	});

	test('is as wide as the room it was given, and has a label for each layer', () => {
		fc.assert(
			fc.property(anyStack, (diagram) => {
				const { box, textMm, layers } = drawn(diagram, 'd.L');
				expect((box.maxX - box.minX) / textMm).toBeCloseTo(NARROW.widthEm, 6);
				expect(layers.map(({ layer }) => layer).toSorted((a, b) => a - b)).toEqual([...stackOf(diagram, 'd.L')!.layers.keys()]);
			}),
			{ numRuns: 40 }
		);
	});
});

describe('heights', () => {
	const stud = circuit({ b: ['battery'], d: ['fused-bus'] }, [
		['b.pos', 'd.L', { gauge: '4/0' }],
		['b.pos', 'd.L', { gauge: '6' }]
	]);

	test('are those of the model: each pad is drawn where it lies, and they add up to the stack', () => {
		const stack = stackOf(stud, 'd.L')!;
		const { primitives } = drawn(stud, 'd.L');
		// Pads 4.8 and 2.0, washer 1.6, lock washer 2.0 under the nut (lug table and ISO 7089, DIN 127).
		expect(stack.heightMm).toBeCloseTo(4.8 + 2 + 1.6 + 2);
		for (const { bottomMm, thicknessMm, widthMm, item } of stack.layers.filter(
			({ item }) => item.kind === 'lug' || item.kind === 'washer'
		)) {
			const pad = primitives.find(
				(shape) =>
					shape.kind === 'rect' &&
					Math.abs(shape.w - widthMm) < 1e-9 &&
					Math.abs(shape.h - thicknessMm) < 1e-9 &&
					Math.abs(-shape.y - bottomMm - thicknessMm) < 1e-9
			);
			expect(pad, item.kind).toBeDefined();
		}
	});

	test('are written beside it', () => {
		const texts = drawn(stud, 'd.L').primitives.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
		expect(texts).toEqual(expect.arrayContaining(['10.4', '6.8', 'thread left 2.8 mm', '4/0 AWG lug of W1', 'seat, M8']));
	});

	test('say how much a thread is too short', () => {
		const full = circuit(
			{ b: ['battery'], d: ['fused-bus'] },
			['4/0', '2/0', '6'].map((gauge) => ['b.pos', 'd.L', { gauge }] as const)
		);
		const texts = drawn(full, 'd.L').primitives.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
		// 4.8 + 3.8 + 2.0 + 1.6 + 2.0 = 14.2; nut 6.8 and 1.5 × 1.25 make 22.875 on 20 mm.
		expect(texts).toContain('2.9 mm too short');
	});
});

test('nothing is stacked in a clamp', () => {
	const clamp = circuit({ b: ['battery'], p: ['blade-panel'] }, [['b.pos', 'p.1', { gauge: '12' }]]);
	const stack = stackOf(clamp, 'p.1');
	if (stack?.terminal.thread === null)
		expect(() => drawElevation({ diagram: clamp, stack, joints: [], marks: [], insulation: () => 'conductor:red' }, NARROW)).toThrow(
			RangeError
		);
	else expect.fail('position 1 of a blade panel is a clamp');
});
