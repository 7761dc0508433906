import { lugOf } from '#core/conductors';
import { unionBoxes, type Box } from '#core/geometry';
import { boundsOf, line, type Primitive } from '#core/graphics';
import { threadNeededMm, type Layer } from '#core/studs';
import { thread } from '#core/tables';
import { reader } from '#core/units';
import { blockTopMm, drawBlock, drawFuse, drawSleeve, overhangOf } from './block.ts';
import { drawPath } from './current-path.ts';
import { drawDimensions, drawScaleBar, type Span } from './dimensions.ts';
import { directionsOf, type Directions } from './directions.ts';
import { BASE_MM, drawLockWasher, drawNut, drawSeat, drawThread, drawWasher, hiddenStud, SEAT_MM } from './hardware.ts';
import { drawLug, lugReachMm, lugTopMm } from './lug.ts';
import { slab } from './outline.ts';
import { placeRows, type Row } from './rows.ts';
import type { DrawnLayer, Elevation, ElevationInput, ElevationRoom } from './types.ts';
import { coverWords, layerDetail, seatText, seenFromText, threadWords } from './words.ts';

/** Shares of the width, in text sizes: heights at the left, labels at the right, the drawing between. */
const NARROW = { dimensionsEm: 3.2, labels: 0.49 };
const WIDE = { dimensionsEm: 8.2, labels: 0.5 };
/** Thousandths of an inch take more digits than tenths of a millimetre. */
const INCHES_EM = 0.9;
/** The longest of what is written there. */
const LABELS_EM = 34;
const WIDE_FROM_EM = 44;
const LEADER_EM = 1.5;
/** Each lug that leaves by the same side as one below it is cut off a little sooner, so that all can be seen. */
const STEP_MM = 2.2;

/**
 * A stud from the side with all that sits on it. One scale in both directions, as large as the room allows. Throws on
 * a clamp, on which nothing is stacked.
 */
export function drawElevation(input: ElevationInput, room: ElevationRoom): Elevation {
	const { diagram, stack, joints, marks } = input;
	const id = stack.terminal.thread;
	if (id === null) throw new RangeError(`Nothing is stacked in a clamp (${stack.key}).`);
	const wide = room.widthEm >= WIDE_FROM_EM;
	const columns = wide ? WIDE : NARROW;
	const dimensionsEm = columns.dimensionsEm + (reader().short === 'in' ? INCHES_EM : 0);
	const labelsEm = Math.min(LABELS_EM, room.widthEm * columns.labels);
	const pictureEm = room.widthEm - dimensionsEm - LEADER_EM - labelsEm;

	const directions = directionsOf(diagram, stack);
	const nut = stack.layers.findLast(({ item }) => item.kind === 'nut');
	const usableMm = stack.terminal.usableLengthMm ?? stack.heightMm;
	const coverMm = stack.terminal.coverHeightMm;
	const nutTopMm = nut ? nut.bottomMm + nut.thicknessMm : stack.heightMm;
	const neededMm = nutTopMm + threadNeededMm(id) - thread(id).nutHeightMm;
	const bodyTops = stack.layers.map((layer) => topOf(input, layer));
	const topMm = Math.max(usableMm, nutTopMm, neededMm, (coverMm ?? 0) + 0.5, ...bodyTops) + 1;
	const bottomMm = -SEAT_MM - BASE_MM;

	const least = extents(input, directions, 'leastMm');
	const whole = extents(input, directions, 'wholeMm');
	const textMm = Math.max((least.left + least.right) / pictureEm, (topMm - bottomMm) / room.heightEm);
	const { left, right } = shareOut(least, whole, pictureEm * textMm);

	const shapes: Primitive[] = [];
	const bodies: Box[] = [];
	const seatHalf = Math.min(left, right, Math.max(10, thread(id).washerDiameterMm / 2 + 5));
	shapes.push(...drawSeat(seatHalf, stack.terminal.fuseInStack !== undefined), ...drawThread(id, 0, usableMm));
	const reaches = reachesOf(stack.layers, directions, left, right);
	for (const [index, layer] of stack.layers.entries()) {
		const drawn = drawLayer(input, layer, directions, index, reaches[index]!);
		shapes.push(...drawn);
		bodies.push(boundsOf(drawn));
	}
	shapes.push(...hiddenStud(id, 0, Math.min(usableMm, nutTopMm)));
	for (const { item, bottomMm: z, thicknessMm } of stack.layers)
		if (item.kind === 'fuse') shapes.push(...drawSleeve(thread(id).majorMm, z, z + thicknessMm));
	if (usableMm < neededMm)
		shapes.push(
			slab(-thread(id).majorMm / 2, thread(id).majorMm / 2, Math.max(usableMm, 0), neededMm, {
				stroke: 'error',
				width: 0.35,
				dash: [1, 0.7]
			})
		);
	for (const { layer, paint } of marks.toReversed()) {
		const { bottomMm: z, thicknessMm, widthMm } = stack.layers[layer]!;
		shapes.push(slab(-widthMm / 2 - 0.5, widthMm / 2 + 0.5, z - 0.15, z + thicknessMm + 0.15, { stroke: paint, width: 0.5, r: 0.6 }));
	}
	shapes.push(...drawPath(stack, joints, directions, (layer) => reaches[layer]!));

	const cover = coverMm === null ? null : { ...coverWords(nutTopMm, coverMm), zMm: coverMm };
	if (cover) shapes.push(line(-left, -cover.zMm, right, -cover.zMm, { stroke: cover.closes ? 'ok' : 'error', width: 0.4, dash: [2, 1.2] }));

	const threadLeft = threadWords(stack, neededMm - nutTopMm);
	const labelsX = right + LEADER_EM * textMm;
	const rightX = labelsX + labelsEm * textMm;
	const rows = rowsOf(input, wide, { cover, threadLeft, usableMm, neededMm, seatHalf });
	const placed = placeRows(rows, labelsX, rightX, right + 0.1 * textMm, textMm, room);
	const dimensionsX = -left - textMm * 0.55;
	const dimensions = drawDimensions(
		spansOf(stack.heightMm, nutTopMm, usableMm, cover),
		stack.layers.map((layer) => layer.bottomMm),
		dimensionsX,
		textMm,
		wide
	);
	const scaleY = -bottomMm + textMm * 1.1;
	const scaleBar = drawScaleBar(-left, scaleY, (left + right) * 0.5, textMm);

	const rowsBox = placed.boxes.reduce((box, row) => unionBoxes(box, row.box), {
		minX: -left,
		maxX: rightX,
		minY: -topMm,
		maxY: scaleY + textMm * 0.7
	});
	const bounds = [...dimensions.words, ...bodies].reduce((box, word) => unionBoxes(box, word), rowsBox);
	return {
		primitives: [...shapes, ...dimensions.primitives, ...scaleBar.primitives, ...placed.primitives],
		box: { ...bounds, minX: -left - dimensionsEm * textMm, maxX: rightX },
		textMm,
		layers: placed.boxes.flatMap(({ layer, box }): DrawnLayer[] => (layer === null ? [] : [{ layer, body: bodies[layer]!, row: box }])),
		words: [...placed.words, ...dimensions.words, ...scaleBar.words],
		seenFrom: seenFromText(directions.seenFrom)
	};
}

/** Where a block's post is shown it may be higher: the box then grows with it. */
const topOf = ({ diagram }: ElevationInput, layer: Layer): number => {
	if (layer.item.kind === 'lug') return lugTopMm(layer, diagram.conductors[layer.item.conductor]!.gauge);
	return layer.item.kind === 'block' ? blockTopMm(layer, overhangOf(diagram, layer.item.block), 0) : layer.bottomMm + layer.thicknessMm;
};

interface Extents {
	readonly left: number;
	readonly right: number;
}

/** Least or whole reach to either side of the stud's axis. */
function extents({ diagram, stack }: ElevationInput, directions: Directions, reach: 'leastMm' | 'wholeMm'): Extents {
	const half = Math.max(11, ...stack.layers.map(({ widthMm }) => widthMm / 2)) + 1.5;
	const of = (side: 'left' | 'right'): number => {
		const here = stack.layers.filter((_, index) => directions.of.get(index) === side);
		return Math.max(
			half,
			...here.map(({ item, thicknessMm }, place) =>
				item.kind === 'lug'
					? lugReachMm(diagram.conductors[item.conductor]!.gauge, thicknessMm)[reach] + (here.length - 1 - place) * STEP_MM
					: item.kind === 'block'
						? overhangOf(diagram, item.block)[reach]
						: 0
			)
		);
	};
	return { left: of('left'), right: of('right') };
}

/** Room beyond the least goes to the sides that can use it, in equal parts; what nobody can use is left on both. */
function shareOut(least: Extents, whole: Extents, roomMm: number): Extents {
	const spare = roomMm - least.left - least.right;
	const leftWants = whole.left - least.left;
	const rightWants = whole.right - least.right;
	const half = spare / 2;
	const leftGets = Math.min(leftWants, Math.max(half, spare - rightWants));
	const rightGets = Math.min(rightWants, spare - leftGets);
	const idle = (spare - leftGets - rightGets) / 2;
	return { left: least.left + leftGets + idle, right: least.right + rightGets + idle };
}

function reachesOf(layers: readonly Layer[], directions: Directions, left: number, right: number): number[] {
	return layers.map(({ item }, index) => {
		const direction = directions.of.get(index);
		if (direction !== 'left' && direction !== 'right') return 0;
		const below = layers
			.slice(0, index)
			.filter((_, other) => directions.of.get(other) === direction && layers[other]!.item.kind === item.kind).length;
		return (direction === 'left' ? left : right) - below * STEP_MM;
	});
}

function drawLayer(
	{ diagram, insulation }: ElevationInput,
	layer: Layer,
	directions: Directions,
	index: number,
	reachMm: number
): Primitive[] {
	const { item } = layer;
	const direction = directions.of.get(index) ?? 'far';
	switch (item.kind) {
		case 'lug': {
			const { gauge } = diagram.conductors[item.conductor]!;
			return drawLug(layer, gauge, direction, Math.min(reachMm, lugOf(gauge).lengthMm + 10), insulation(item.conductor));
		}
		case 'block':
			return drawBlock(layer, direction, reachMm, overhangOf(diagram, item.block));
		case 'fuse':
			return drawFuse(layer);
		case 'washer':
			return drawWasher(layer);
		case 'lock-washer':
			return drawLockWasher(layer);
		case 'nut':
			return drawNut(layer);
	}
}

interface Around {
	readonly cover: { readonly text: string; readonly closes: boolean; readonly zMm: number } | null;
	readonly threadLeft: { readonly text: string; readonly isShort: boolean } | null;
	readonly usableMm: number;
	readonly neededMm: number;
	readonly seatHalf: number;
}

/** From the top: cover, thread, layers from the nut down, seat; in the order of the heights they point at. */
function rowsOf(
	{ stack, joints, marks }: ElevationInput,
	wide: boolean,
	{ cover, threadLeft, usableMm, neededMm, seatHalf }: Around
): Row[] {
	const row = (xMm: number, zMm: number, title: string, rest: Partial<Row> = {}): Row => ({
		layer: null,
		from: { x: xMm, y: -zMm },
		title,
		detail: null,
		paint: 'muted',
		marks: [],
		...rest
	});
	const nut = stack.layers.findLast(({ item }) => item.kind === 'nut');
	const nutTop = nut ? nut.bottomMm + nut.thicknessMm : stack.heightMm;
	const rows = stack.layers.map((layer, index) =>
		row(layer.widthMm / 2 - 0.6, layer.bottomMm + layer.thicknessMm / 2, layer.label, {
			layer: index,
			paint: 'ink',
			detail: layerDetail(
				layer,
				joints.find(({ above }) => above === index),
				stack,
				wide
			),
			marks: marks.filter((mark) => mark.layer === index)
		})
	);
	rows.push(row(seatHalf - 3, -SEAT_MM / 2, seatText(stack)));
	if (threadLeft)
		rows.push(
			row(1, (nutTop + (threadLeft.isShort ? neededMm : usableMm)) / 2, threadLeft.text, { paint: threadLeft.isShort ? 'error' : 'muted' })
		);
	if (cover) rows.push(row(4, cover.zMm, cover.text, { paint: cover.closes ? 'ok' : 'error' }));
	return rows.toSorted((a, b) => a.from.y - b.from.y);
}

function spansOf(heightMm: number, nutTopMm: number, usableMm: number, cover: Around['cover']): Span[] {
	return [
		{ name: 'stack', fromMm: 0, toMm: heightMm, paint: 'ink' },
		{ name: 'nut', fromMm: heightMm, toMm: nutTopMm, paint: 'muted' },
		...(usableMm > nutTopMm + 0.05 ? [{ name: 'thread', fromMm: nutTopMm, toMm: usableMm, paint: 'muted' as const }] : []),
		...(cover && cover.zMm > nutTopMm + 0.05 && cover.zMm > usableMm + 0.05
			? [
					{
						name: 'to cover',
						fromMm: Math.max(nutTopMm, usableMm),
						toMm: cover.zMm,
						paint: cover.closes ? ('ok' as const) : ('error' as const)
					}
				]
			: [])
	];
}
