/** Shapes that several parts share. Sizes are millimetres at full size. */
import type { Box } from '#core/geometry';
import { block, boxRect, circle, line, nutFromAbove, polyline, rect, text, textWidthMm, type Primitive } from '#core/graphics';
import { thread as threadOf, type ThreadId } from '#core/tables';
import { roundedText } from '#core/units';

/** A box of this size around (0, 0). */
export const centredBox = (widthMm: number, heightMm: number): Box => ({
	minX: -widthMm / 2,
	minY: -heightMm / 2,
	maxX: widthMm / 2,
	maxY: heightMm / 2
});

/** The moulded or sheet-metal body. */
export const body = (box: Box, r = 3): Primitive => boxRect(box, { fill: 'case', stroke: 'case-edge', width: 0.7, r });

/** A raised or sunk area of the body. */
export const raised = (x: number, y: number, w: number, h: number, r = 2): Primitive =>
	rect(x, y, w, h, { fill: 'case-raised', stroke: 'case-edge', width: 0.35, r });

const METAL = { fill: 'metal', stroke: 'metal-dark', width: 0.4 } as const;

/** Flat copper or brass by its top left corner. */
export const metal = (x: number, y: number, w: number, h: number, r = 1): Primitive => rect(x, y, w, h, { ...METAL, r });

/** A bolt that holds something down and takes no conductor. */
export const bolt = (x: number, y: number, thread: ThreadId): Primitive[] => {
	const { nutAcrossFlatsMm, majorMm } = threadOf(thread);
	return nutFromAbove({ x, y }, nutAcrossFlatsMm, majorMm);
};

/** A hole that fixes the part to its board. */
export const fixingHole = (x: number, y: number, r = 2.6): Primitive => circle(x, y, r, { fill: 'paper', stroke: 'case-edge', width: 0.4 });

/** Cooling fins or slots: `count` lines between two heights, across the width. */
export function slots(x: number, y: number, w: number, h: number, count: number): Primitive[] {
	return Array.from({ length: count }, (_, index) => {
		const at = y + (count === 1 ? 0 : (h * index) / (count - 1));
		return line(x, at, x + w, at, { stroke: 'case-edge', width: 0.5, opacity: 0.55, cap: 'round' });
	});
}

/** Upright fins between two sides. */
export function fins(x: number, y: number, w: number, h: number, count: number): Primitive[] {
	return Array.from({ length: count }, (_, index) => {
		const at = x + (count === 1 ? 0 : (w * index) / (count - 1));
		return line(at, y, at, y + h, { stroke: 'case-edge', width: 0.5, opacity: 0.55 });
	});
}

/** Text made smaller until it fits a width. */
export const fittedText = (
	x: number,
	y: number,
	content: string,
	size: number,
	width: number,
	options: Parameters<typeof text>[4] = {}
): Primitive =>
	text(x, y, content, Math.min(size, (size * width) / Math.max(textWidthMm(content, size, options.bold), 1e-6)), {
		upright: true,
		...options
	});

/** "7.5", or nothing for an empty holder. */
const ratingText = (ratingA: number | null): string => (ratingA === null ? '' : roundedText(ratingA, 1));

/**
 * A bolt-down strip fuse from a bolt at (x1, y1) to one at (x2, y2), level or upright: metal tabs, body with the
 * element's window, rating. An empty place shows its seats only.
 */
export function stripFuse(x1: number, y1: number, x2: number, y2: number, ratingA: number | null): Primitive[] {
	const level = Math.abs(x2 - x1) > Math.abs(y2 - y1);
	const cx = (x1 + x2) / 2;
	const cy = (y1 + y2) / 2;
	const length = Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1));
	const across = (w: number, h: number): [number, number] => (level ? [w, h] : [h, w]);
	if (ratingA === null) {
		return [block(cx, cy, ...across(length * 0.5, 14), { stroke: 'case-edge', width: 0.4, dash: [2, 2], r: 2 })];
	}
	const half = length * 0.27;
	const element = level
		? [
				{ x: cx - half * 0.7, y: cy },
				{ x: cx - half * 0.2, y: cy },
				{ x: cx, y: cy - 2.4 },
				{ x: cx + half * 0.2, y: cy },
				{ x: cx + half * 0.7, y: cy }
			]
		: [
				{ x: cx, y: cy - half * 0.9 },
				{ x: cx, y: cy - half * 0.6 },
				{ x: cx - 2.4, y: cy - half * 0.42 },
				{ x: cx, y: cy - half * 0.24 },
				{ x: cx, y: cy - half * 0.02 }
			];
	return [
		block(cx, cy, ...across(length + 16, 16), { ...METAL, r: 3 }),
		block(cx, cy, ...across(length * 0.58, 18), { fill: 'case-raised', stroke: 'case-edge', width: 0.5, r: 2 }),
		...(level
			? [
					block(cx, cy - 3.4, length * 0.46, 7, { fill: 'fuse', stroke: 'case-edge', width: 0.3, r: 1 }),
					polyline(shifted(element, 0, -3.4), ELEMENT)
				]
			: [block(cx, cy - half * 0.46, 11, half * 1.1, { fill: 'fuse', stroke: 'case-edge', width: 0.3, r: 1 }), polyline(element, ELEMENT)]),
		fittedText(cx, level ? cy + 5 : cy + half * 0.56, ratingText(ratingA), 7, level ? length * 0.5 : 13, { bold: true })
	];
}

const ELEMENT = { stroke: 'metal-dark', width: 0.9 } as const;

const shifted = (points: readonly { x: number; y: number }[], dx: number, dy: number) =>
	points.map(({ x, y }) => ({ x: x + dx, y: y + dy }));

/** A cartridge between two bolts, level or upright. */
export function cartridgeFuse(x1: number, y1: number, x2: number, y2: number, ratingA: number | null): Primitive[] {
	const level = Math.abs(x2 - x1) > Math.abs(y2 - y1);
	const cx = (x1 + x2) / 2;
	const cy = (y1 + y2) / 2;
	const length = Math.max(Math.abs(x2 - x1), Math.abs(y2 - y1));
	const across = (w: number, h: number): [number, number] => (level ? [w, h] : [h, w]);
	if (ratingA === null) return stripFuse(x1, y1, x2, y2, null);
	return [
		block(cx, cy, ...across(length + 16, 13), { ...METAL, r: 2 }),
		block(cx, cy, ...across(length * 0.62, 21), { ...METAL, r: 2 }),
		block(cx, cy, ...across(length * 0.4, 21), { fill: 'fuse', stroke: 'case-edge', width: 0.4 }),
		fittedText(cx, cy, ratingText(ratingA), 7, level ? length * 0.38 : 19, { bold: true })
	];
}

/** A blade fuse in its socket, from above: long side level. */
export const bladeFuse = (x: number, y: number, widthMm: number, ratingA: number | null): Primitive[] =>
	ratingA === null
		? [
				block(x, y, widthMm, 8, { stroke: 'case-edge', width: 0.4, r: 1.5 }),
				line(x - widthMm * 0.32, y - 2, x - widthMm * 0.32, y + 2, { stroke: 'case-edge', width: 0.8 }),
				line(x + widthMm * 0.32, y - 2, x + widthMm * 0.32, y + 2, { stroke: 'case-edge', width: 0.8 })
			]
		: [
				block(x, y, widthMm, 9, { fill: 'fuse', stroke: 'case-edge', width: 0.5, r: 2 }),
				fittedText(x, y, ratingText(ratingA), 6.5, widthMm * 0.85, { bold: true })
			];

/** A square terminal-mounted fuse around its post. */
export const cubeFuse = (x: number, y: number, ratingA: number | null): Primitive[] =>
	ratingA === null
		? [block(x, y, 24, 24, { stroke: 'case-edge', width: 0.4, dash: [2, 2], r: 2 })]
		: [
				block(x, y, 25, 25, { fill: 'fuse', stroke: 'case-edge', width: 0.6, r: 2 }),
				block(x, y, 25, 13, { fill: 'metal', stroke: 'metal-dark', width: 0.3, opacity: 0.7 })
			];
