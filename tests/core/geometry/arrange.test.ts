import { expect, test } from 'vitest';
import { ALIGNMENTS, alignBoxes, boxCentre, distributeBoxes, translateBox, type AlignTo, type Box } from '#core/geometry';

const boxes = new Map<string, Box>([
	['a', { minX: 0, minY: 0, maxX: 100, maxY: 50 }],
	['b', { minX: 300, minY: 20, maxX: 340, maxY: 120 }],
	['c', { minX: 120, minY: 200, maxX: 180, maxY: 220 }]
]);
const after = (shifts: ReadonlyMap<string, { x: number; y: number }>) =>
	[...boxes].map(([id, box]) => translateBox(box, shifts.get(id) ?? { x: 0, y: 0 }));

const PLACE: Record<AlignTo, (box: Box) => number> = {
	left: ({ minX }) => minX,
	centre: (box) => boxCentre(box).x,
	right: ({ maxX }) => maxX,
	top: ({ minY }) => minY,
	middle: (box) => boxCentre(box).y,
	bottom: ({ maxY }) => maxY
};
/** Of the box around all three. */
const EXPECTED: Record<AlignTo, number> = { left: 0, centre: 170, right: 340, top: 0, middle: 110, bottom: 220 };

test.each(ALIGNMENTS)('aligned %s, all have that place in common and move along one axis only', (to) => {
	const shifts = alignBoxes(boxes, to);
	for (const box of after(shifts)) expect(PLACE[to](box)).toBeCloseTo(EXPECTED[to], 9);
	const still = to === 'left' || to === 'centre' || to === 'right' ? 'y' : 'x';
	for (const shift of shifts.values()) expect(shift[still]).toBe(0);
});

test('what lies in line already is not moved', () => {
	expect([...alignBoxes(boxes, 'left').keys()]).toEqual(['b', 'c']);
});

test('distributed across, gaps are equal and the outermost stay', () => {
	const [a, b, c] = after(distributeBoxes(boxes, 'across'));
	expect([a!.minX, b!.maxX]).toEqual([0, 340]);
	expect(c!.minX - a!.maxX).toBeCloseTo(b!.minX - c!.maxX, 9);
});

test('distributed down, gaps are equal; two have none to share', () => {
	const [a, b, c] = after(distributeBoxes(boxes, 'down'));
	expect(b!.minY - a!.maxY).toBeCloseTo(c!.minY - b!.maxY, 9);
	expect(distributeBoxes(new Map([...boxes].slice(0, 2)), 'down').size).toBe(0);
});
