/** A stud from above, to scale: where barrels and cables go, and what lies beside it. */
import { areaMm2, lugOf } from '#core/conductors';
import { studKey, terminalRef, type ConductorId, type Diagram, type StudKey } from '#core/diagram';
import { unionBoxes, type Box, type Point, type Side } from '#core/geometry';
import {
	boundsOf,
	circle,
	line,
	nutFromAbove,
	placePrimitives,
	polygon,
	rect,
	text,
	textWidthMm,
	type Paint,
	type Primitive
} from '#core/graphics';
import { placedTerminal, poseOf } from '#core/layout';
import { describe } from '#core/parts';
import { landings, planView, type PlanLug, type Stack } from '#core/studs';
import { thread } from '#core/tables';
import { drawScaleBar } from './dimensions.ts';
import { COPPER } from './outline.ts';
import { tenthsText } from '#core/units';

export interface PlanInput {
	readonly diagram: Diagram;
	readonly stack: Stack;
	readonly insulation: (conductor: ConductorId) => Paint;
}

export interface PlanRoom {
	readonly widthEm: number;
	readonly heightEm: number;
}

export interface PlanDrawing {
	readonly primitives: readonly Primitive[];
	readonly box: Box;
	readonly textMm: number;
	/** Boxes of everything written. */
	readonly words: readonly Box[];
}

/** Angle on the drawing, clockwise from the right, in degrees. */
const ANGLE: Readonly<Record<Side, number>> = { east: 0, south: 90, west: 180, north: 270 };
/** Of each cable so much is shown beyond its lug. */
const CABLE_MM = 10;
/** Studs further off than this have nothing to do with this one. */
const NEAR_MM = 70;
/** Air wanted between pads on studs of one bar: common practice, no source. */
const GAP_MM = 1;

export function drawPlan(input: PlanInput, room: PlanRoom): PlanDrawing {
	const { diagram, stack } = input;
	const id = stack.terminal.thread;
	if (id === null) throw new RangeError(`Nothing is stacked in a clamp (${stack.key}).`);
	const view = planView(diagram, stack);
	const angles = anglesOf(view.lugs, view.fanDeg);
	const neighbours = neighboursOf(input);

	const shapes: Primitive[] = neighbours.flatMap(({ shapes }) => shapes);
	const cables: { at: Point; label: string }[] = [];
	for (const [index, { item, widthMm }] of stack.layers.entries()) {
		if (item.kind === 'lug') {
			const angle = angles.get(index)!;
			const { gauge, label } = diagram.conductors[item.conductor]!;
			shapes.push(...lugFromAbove(gauge, angle, input.insulation(item.conductor)));
			const far = lugOf(gauge).lengthMm + CABLE_MM;
			cables.push({ at: polar(far, angle), label: label.trim() });
		} else if (item.kind === 'block') shapes.push(...blockFromAbove(diagram, stack.key, item.block, widthMm));
		else if (item.kind === 'fuse')
			shapes.push(rect(-widthMm / 2, -widthMm / 2, widthMm, widthMm, { fill: 'fuse', stroke: 'case-edge', width: 0.4, r: 1.5 }));
	}
	const { nutAcrossFlatsMm, majorMm, washerDiameterMm } = thread(id);
	shapes.push(
		circle(0, 0, washerDiameterMm / 2, { fill: 'case-raised', stroke: 'case-edge', width: 0.3 }),
		...nutFromAbove({ x: 0, y: 0 }, nutAcrossFlatsMm, majorMm)
	);

	const bare = boundsOf(shapes);
	const textMm = Math.max((bare.maxX - bare.minX) / (room.widthEm - 2 * MARGIN_EM), (bare.maxY - bare.minY) / room.heightEm, 1);
	for (const { at, gapMm } of neighbours) if (gapMm !== null) shapes.push(...gapLine(at, gapMm, textMm));

	const words: Box[] = [];
	const write = (at: Point, content: string, size: number, fill: Paint) => {
		if (content === '') return;
		const half = textWidthMm(content, size) / 2;
		const box = { minX: at.x - half, maxX: at.x + half, minY: at.y - size * 0.6, maxY: at.y + size * 0.6 };
		// What has no room is left out: all of it is in the list below the drawing.
		if (words.some((other) => other.minX < box.maxX && box.minX < other.maxX && other.minY < box.maxY && box.minY < other.maxY)) return;
		words.push(box);
		shapes.push(text(at.x, at.y, content, size, { fill, halo: 'case' }));
	};
	for (const { at, label } of cables) {
		const length = Math.hypot(at.x, at.y);
		const beyond = (textWidthMm(label, textMm) / 2) * Math.abs(at.x / length) + textMm * 0.8;
		write({ x: at.x * (1 + beyond / length), y: at.y * (1 + beyond / length) }, label, textMm, 'ink');
	}
	for (const { at, label, gapMm } of neighbours) {
		if (gapMm !== null)
			write(
				{ x: at.x / 2, y: at.y / 2 - textMm * 0.9 },
				gapMm < 0 ? `−${tenthsText(-gapMm)}` : tenthsText(gapMm),
				textMm * 0.9,
				gapPaint(gapMm)
			);
		write(at, label, textMm * 0.9, 'ink');
	}
	const drawn = words.reduce(unionBoxes, boundsOf(shapes));
	const middle = (drawn.minX + drawn.maxX) / 2;
	const half = Math.max((room.widthEm * textMm) / 2, (drawn.maxX - drawn.minX) / 2);
	const scaleY = drawn.maxY + textMm * 1.2;
	const scaleBar = drawScaleBar(middle - half + textMm * 0.4, scaleY, half * 0.6, textMm);
	return {
		primitives: [...shapes, ...scaleBar.primitives],
		box: { minX: middle - half, maxX: middle + half, minY: drawn.minY - textMm * 0.4, maxY: scaleY + textMm * 0.8 },
		textMm,
		words: [...words, ...scaleBar.words]
	};
}

/** Left and right of the drawing, for the names of cables. */
const MARGIN_EM = 2.5;

const polar = (radius: number, degrees: number): Point => ({
	x: radius * Math.cos((degrees * Math.PI) / 180),
	y: radius * Math.sin((degrees * Math.PI) / 180)
});

/** By index of the layer. Lugs that leave by one side are fanned, so that their barrels clear each other, but never so far that they point back. */
function anglesOf(lugs: readonly PlanLug[], fanDeg: number | null): Map<number, number> {
	const angles = new Map<number, number>();
	for (const side of new Set(lugs.map((lug) => lug.side))) {
		const beside = lugs.filter((lug) => lug.side === side);
		const step = Math.min(fanDeg ?? 0, 150 / Math.max(1, beside.length - 1));
		beside.forEach((lug, place) => angles.set(lug.index, ANGLE[side] + (place - (beside.length - 1) / 2) * step));
	}
	return angles;
}

function lugFromAbove(gauge: Parameters<typeof lugOf>[0], angle: number, insulation: Paint): Primitive[] {
	const { padWidthMm, lengthMm, barrelMm } = lugOf(gauge);
	const neck = padWidthMm * 0.5 + barrelMm * 0.25;
	const sleeve = neck + (lengthMm - neck) * 0.55;
	const turned = (x: number, y: number): Point => {
		const radius = Math.hypot(x, y);
		return polar(radius, angle + (Math.atan2(y, x) * 180) / Math.PI);
	};
	const bar = (x1: number, x2: number, widthMm: number, fill: Paint): Primitive =>
		polygon([turned(x1, -widthMm / 2), turned(x2, -widthMm / 2), turned(x2, widthMm / 2), turned(x1, widthMm / 2)], {
			fill,
			stroke: fill === 'metal' ? 'metal-dark' : 'case-edge',
			width: 0.3
		});
	const cable = Math.max(barrelMm * 1.05, Math.sqrt(areaMm2(gauge)));
	return [bar(sleeve, lengthMm + CABLE_MM, cable, insulation), bar(0, sleeve, barrelMm, 'metal'), circle(0, 0, padWidthMm / 2, COPPER)];
}

function blockFromAbove(diagram: Diagram, key: StudKey, block: string, plateMm: number): Primitive[] {
	const pose = poseOf(diagram, block);
	const here = placedTerminal(diagram, terminalRef(key));
	if (!pose || !here || !Object.hasOwn(diagram.parts, block)) return [circle(0, 0, plateMm / 2, COPPER)];
	return placePrimitives(describe(diagram.parts[block]!).outline(), { x: pose.at.x - here.at.x, y: pose.at.y - here.at.y }, pose.turn);
}

interface DrawnNeighbour {
	readonly at: Point;
	readonly label: string;
	/** Between the widest pads here and there; null where either has none. */
	readonly gapMm: number | null;
	readonly shapes: readonly Primitive[];
}

function neighboursOf({ diagram, stack }: PlanInput): DrawnNeighbour[] {
	const { part } = terminalRef(stack.key);
	const here = placedTerminal(diagram, terminalRef(stack.key));
	const landed = landings(diagram);
	const gaps = new Map(planView(diagram, stack, landed).neighbours.map(({ stud, gapMm }) => [stud, gapMm]));
	return describe(diagram.parts[part]!)
		.terminals.filter(({ id, kind }) => kind === 'stud' && id !== stack.terminal.id)
		.flatMap((terminal): DrawnNeighbour[] => {
			const key = studKey({ part, terminal: terminal.id });
			const placed = placedTerminal(diagram, { part, terminal: terminal.id });
			if (!placed || !here || terminal.thread === null) return [];
			const at = { x: placed.at.x - here.at.x, y: placed.at.y - here.at.y };
			if (Math.hypot(at.x, at.y) > NEAR_MM) return [];
			const widest = Math.max(
				0,
				...(landed.get(key) ?? []).flatMap((item) =>
					item.kind === 'lug' ? [lugOf(diagram.conductors[item.conductor]!.gauge).padWidthMm] : []
				)
			);
			const { nutAcrossFlatsMm, majorMm } = thread(terminal.thread);
			return [
				{
					at,
					label: terminal.id,
					gapMm: gaps.get(key) ?? null,
					shapes: [
						...(widest > 0 ? [circle(at.x, at.y, widest / 2, { ...COPPER, opacity: 0.55 })] : []),
						...nutFromAbove(at, nutAcrossFlatsMm, majorMm)
					]
				}
			];
		});
}

const gapPaint = (gapMm: number): Paint => (gapMm < 0 ? 'error' : gapMm < GAP_MM ? 'warning' : 'ok');

/** From stud to stud, in the colour of how much air there is between the pads. */
const gapLine = (at: Point, gapMm: number, textMm: number): Primitive[] => [
	line(0, 0, at.x, at.y, { stroke: gapPaint(gapMm), width: textMm * 0.12, dash: [textMm * 0.35, textMm * 0.25] })
];
