/** Washers, nut, thread and seat, from the side. */
import type { Primitive } from '#core/graphics';
import type { Layer } from '#core/studs';
import { thread, type ThreadId } from '#core/tables';
import { at, line, MOULDING, polygon, polyline, slab, STEEL } from './outline.ts';

export const drawWasher = ({ bottomMm, thicknessMm, widthMm }: Layer): Primitive[] => [
	slab(-widthMm / 2, widthMm / 2, bottomMm, bottomMm + thicknessMm, { ...STEEL, r: Math.min(0.3, thicknessMm / 3) })
];

/** A spring washer, split, its ends a little apart. */
export function drawLockWasher({ bottomMm, thicknessMm, widthMm }: Layer): Primitive[] {
	const half = widthMm / 2;
	const top = bottomMm + thicknessMm;
	const lean = thicknessMm * 0.5;
	return [
		polygon([at(-half, bottomMm), at(-0.2 - lean / 2, bottomMm), at(-0.2 + lean / 2, top), at(-half, top)], STEEL),
		polygon([at(0.5 - lean / 2, bottomMm), at(half, bottomMm), at(half, top), at(0.5 + lean / 2, top)], STEEL)
	];
}

/** A hexagon nut across its corners: three of its faces show. */
export function drawNut({ bottomMm, thicknessMm, widthMm }: Layer): Primitive[] {
	const half = widthMm / Math.sqrt(3);
	const top = bottomMm + thicknessMm;
	const chamfer = Math.min(thicknessMm * 0.18, half * 0.2);
	return [
		polygon(
			[
				at(-half, bottomMm),
				at(half, bottomMm),
				at(half, top - chamfer),
				at(half - chamfer * 1.4, top),
				at(-half + chamfer * 1.4, top),
				at(-half, top - chamfer)
			],
			{ ...STEEL, fill: 'faint', width: 0.35 }
		),
		...[-half / 2, half / 2].map((x) => line(x, -bottomMm, x, -(top - chamfer * 0.6), { stroke: 'case-edge', width: 0.25 }))
	];
}

/** Thread from one height to another, its flanks to scale. */
export function drawThread(id: ThreadId, z1: number, z2: number): Primitive[] {
	const { majorMm, pitchMm } = thread(id);
	if (z2 <= z1) return [];
	const crest = majorMm / 2;
	// Depth of an ISO and unified thread: 0.613 of the pitch (ISO 68-1).
	const root = crest - 0.613 * pitchMm;
	const turns = Math.max(1, Math.round((z2 - z1) / pitchMm));
	const step = (z2 - z1) / turns;
	const flank = (side: -1 | 1) =>
		Array.from({ length: turns }, (_, turn) => [at(side * root, z1 + turn * step), at(side * crest, z1 + (turn + 0.5) * step)]).flat();
	return [
		polygon([...flank(-1), at(-root, z2), at(root, z2), ...flank(1).toReversed()], { fill: 'metal', stroke: 'metal-dark', width: 0.2 }),
		...Array.from({ length: turns }, (_, turn) =>
			line(-crest, -(z1 + (turn + 0.5) * step), crest, -(z1 + (turn + 0.5) * step), { stroke: 'metal-dark', width: 0.12, opacity: 0.8 })
		)
	];
}

/** The stud's edges behind what lies on it. */
export const hiddenStud = (id: ThreadId, z1: number, z2: number): Primitive[] =>
	[-1, 1].map((side) => {
		const x = (side * thread(id).majorMm) / 2;
		return line(x, -z1, x, -z2, { stroke: 'metal-dark', width: 0.18, dash: [0.9, 0.7], opacity: 0.75 });
	});

export const SEAT_MM = 5;
export const BASE_MM = 5;

/** What the stud stands on: a metal seat in a moulded base, or for a fuse's own post the insulating base alone. */
export function drawSeat(halfMm: number, isInsulated: boolean): Primitive[] {
	const bottom = -SEAT_MM - BASE_MM;
	const hatch = Array.from({ length: Math.max(2, Math.floor((2 * halfMm) / 3)) }, (_, index) => -halfMm + index * 3);
	return [
		slab(-halfMm, halfMm, bottom, isInsulated ? 0 : -SEAT_MM * 0.55, MOULDING),
		...hatch.map((x) =>
			polyline([at(x, bottom), at(Math.min(x + 2.6, halfMm), Math.min(bottom + 2.6, bottom + (halfMm - x)))], {
				stroke: 'case-edge',
				width: 0.15,
				opacity: 0.7
			})
		),
		...(isInsulated ? [] : [slab(-halfMm + 1.5, halfMm - 1.5, -SEAT_MM, 0, { fill: 'metal', stroke: 'metal-dark', width: 0.3, r: 0.4 })])
	];
}
