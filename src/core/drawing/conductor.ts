import { itemKey, type Conductor, type ConductorId } from '#core/diagram';
import { cableDiameterMm, gaugeText, lugOf } from '#core/conductors';
import { distance, pointBetween, unionBoxes, type Point } from '#core/geometry';
import { block, boundsOf, circle, polyline, rect, type Primitive } from '#core/graphics';
import type { Terminal } from '#core/parts';
import { markColour, type Insulation, type Use } from './colours.ts';
import { drawTag, type Tag } from './tag.ts';
import { nut, nutRadiusMm } from './terminal.ts';
import type { DrawnItem } from './types.ts';

/** Radius of bends along the centre line, in cable diameters. */
const ROUND = 1.2;
const CASING_MM = 0.8;
/** A run shorter than this carries no pole mark. */
const MARKED_RUN_MM = 55;

export const tagWords = ({ label, gauge }: Conductor): string => (label === '' ? gaugeText(gauge) : `${label} · ${gaugeText(gauge)}`);

export interface ConductorLooks {
	readonly colour: Insulation;
	readonly use: Use;
	readonly tag: Tag | null;
	/** Terminals at `from` and `to`; undefined where an end hangs in the air. */
	readonly from: Terminal | undefined;
	readonly to: Terminal | undefined;
	/** True where its ends are not shown as lugs: on symbols there are no studs. */
	readonly bare?: boolean;
}

/** A conductor as drawn along its route, lugs included. */
export function drawConductor(id: ConductorId, conductor: Conductor, route: readonly Point[], looks: ConductorLooks): DrawnItem {
	const widthMm = cableDiameterMm(conductor.gauge);
	const paint = `conductor:${looks.colour}` as const;
	const round = widthMm * ROUND;
	const primitives: Primitive[] = [
		polyline(route, { stroke: 'case-edge', width: widthMm + 2 * CASING_MM, round }),
		polyline(route, { stroke: paint, width: widthMm, round }),
		...poleMarks(route, widthMm, looks),
		...(looks.bare
			? []
			: [...drawLug(conductor, looks.from, route[0], route[1]), ...drawLug(conductor, looks.to, route.at(-1), route.at(-2))])
	];
	const labels = looks.tag ? drawTag(looks.tag) : [];
	return {
		key: itemKey('conductor', id),
		box: unionBoxes(boundsOf(primitives), boundsOf(labels)),
		primitives,
		labels,
		body: null,
		route,
		widthMm,
		terminals: []
	};
}

/** Lug on its stud: pad, barrel, and the nut on top again. */
function drawLug(conductor: Conductor, terminal: Terminal | undefined, at: Point | undefined, toward: Point | undefined): Primitive[] {
	if (!terminal || terminal.kind === 'clamp' || !at || !toward) return [];
	const run = distance(at, toward);
	if (run === 0) return [];
	const { padWidthMm, lengthMm } = lugOf(conductor.gauge);
	// A barrel does not bend: it ends before the cable's first bend, unless there is no room for that.
	const straight = Math.max(run - cableDiameterMm(conductor.gauge) * ROUND, nutRadiusMm(terminal));
	const end = pointBetween(at, toward, Math.min(1, Math.min(lengthMm, straight) / run));
	const start = pointBetween(at, toward, Math.min(1, (nutRadiusMm(terminal) * 0.6) / run));
	const metal = { fill: 'metal', stroke: 'metal-dark', width: 0.4 } as const;
	const radius = Math.max(padWidthMm / 2, nutRadiusMm(terminal) * 0.9);
	return [barrel(start, end, cableDiameterMm(conductor.gauge) * 0.84), circle(at.x, at.y, radius, metal), ...nut(at, terminal)];
}

/** A band from one point to another, level or upright. */
function barrel(a: Point, b: Point, width: number): Primitive {
	const metal = { fill: 'metal', stroke: 'metal-dark', width: 0.4 } as const;
	const level = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y);
	return level
		? rect(Math.min(a.x, b.x), a.y - width / 2, Math.abs(b.x - a.x), width, metal)
		: rect(a.x - width / 2, Math.min(a.y, b.y), width, Math.abs(b.y - a.y), metal);
}

/**
 * Plus and minus signs on the insulation, so that poles can be told apart without colour. Filled rectangles: the
 * last line stroked along an item is its own colour.
 */
function poleMarks(route: readonly Point[], widthMm: number, { use, colour }: ConductorLooks): Primitive[] {
	if (use !== 'positive' && use !== 'negative') return [];
	const style = { fill: markColour(colour) } as const;
	const long = widthMm * 0.62;
	const thin = Math.max(0.5, widthMm * 0.14);
	return route.slice(1).flatMap((end, index) => {
		const start = route[index]!;
		const run = distance(start, end);
		if (run < MARKED_RUN_MM) return [];
		const { x, y } = pointBetween(start, end, 0.5 - Math.min(0.25, 30 / run));
		return [block(x, y, long, thin, style), ...(use === 'positive' ? [block(x, y, thin, long, style)] : [])];
	});
}
