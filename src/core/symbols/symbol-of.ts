/**
 * The symbol view of a part: the symbols of what is inside it, led to its terminals where they are on its outline, so that
 * conductors land in the same places in both views.
 */
import { distance, type Box, type Point } from '#core/geometry';
import { boxRect, circle, type Primitive } from '#core/graphics';
import type { Link, PartDescription, SymbolName, Terminal } from '#core/parts';
import { barsOf, drawBar, endsOf, isOutside, onBar, type Bar } from './bars.ts';
import { battery } from './battery.ts';
import { block } from './block.ts';
import { chassis } from './chassis.ts';
import { breaker, contact, disconnector, relay } from './contact.ts';
import { dcConverter, inverter, rectifier, solar } from './converter.ts';
import { fuse } from './fuse.ts';
import { lead, LINE } from './ink.ts';
import { load } from './load.ts';
import { machine } from './machine.ts';
import { shunt } from './shunt.ts';
import { source } from './source.ts';
import { along, MOST_MM, type End, type Glyph } from './way.ts';

/** For the drawing. */
export const SYMBOLS = { symbolOf, wordsOf: symbolWords };

/** Those that stand for a whole part. */
const BLOCKS: Partial<Record<SymbolName, Glyph>> = { rectifier, inverter, 'dc-converter': dcConverter, solar };
/** Those that stand for its one link. */
const SINGLE: Partial<Record<SymbolName, Glyph>> = { generator: machine('G'), motor: machine('M'), relay, disconnector };

const TERMINAL_MM = 2.2;
const BOUNDARY = { stroke: 'case-edge', width: 0.5, dash: [7, 2, 1, 2], opacity: 0.8 } as const;

/** Around (0, 0), before rotation, terminals included. */
function symbolOf(part: PartDescription): Primitive[] {
	const { box, terminals } = part;
	return [
		boxRect(box, { ...BOUNDARY, r: 2 }),
		...inside(part),
		...terminals.map(({ at }) => circle(at.x, at.y, TERMINAL_MM, { ...LINE, fill: 'paper' }))
	];
}

/** Room for designation and ratings in this view; null where they go beside the part. */
function symbolWords(part: PartDescription): Box | null {
	const { nameplate } = part;
	// Leads run everywhere around a converter's square.
	if (!nameplate || blockOf(part)) return null;
	const height = nameplate.maxY - nameplate.minY;
	return { ...nameplate, minY: nameplate.minY + height * 0.4 };
}

function inside(part: PartDescription): Primitive[] {
	const { links, terminals, definition } = part;
	const whole = blockOf(part);
	if (whole)
		return [...block(whole, terminals, areaOf(part)), ...links.flatMap((link) => (link.kind === 'segment' ? throughLead(part, link) : []))];
	const bars = barsOf(part);
	const places = placesOf(part);
	const single = definition?.symbol && SINGLE[definition.symbol];
	const mostMm = bars.length > 0 ? shortestMm(part, bars) : MOST_MM;
	return [
		...bars.flatMap((bar) => drawBar(bar, terminals)),
		...links.flatMap((link, index) => {
			const ends = endsOf(link);
			if (ends.some(isOutside)) return hanging(places, ends);
			if (link.kind === 'segment' && bars.some(({ members }) => members.has(ends[0]!))) return [];
			const [a, b] = ends.map((end): End => {
				const bar = bars.find(({ members }) => members.has(end));
				const other = places.get(ends.find((candidate) => candidate !== end)!)!;
				return bar ? { at: onBar(bar, other.at), side: null } : places.get(end)!;
			});
			return along(single ?? glyphOf(link), a!, b!, { depthMm: depthOf(part, index), mostMm, nearer: bars.length > 0 });
		})
	];
}

/** The symbol that stands for all of a part: a converter is one, whatever it is made of. */
function blockOf({ definition, links }: PartDescription): Glyph | undefined {
	const named = definition?.symbol && BLOCKS[definition.symbol];
	return named ?? (links.some((link) => link.kind === 'source' && link.fedBy !== null) ? dcConverter : undefined);
}

/** Symbols along one bar are of one size: that for which there is room everywhere. */
function shortestMm({ links, terminals }: PartDescription, bars: readonly Bar[]): number {
	const runs = links.flatMap((link) => {
		const ends = endsOf(link);
		const bar = link.kind === 'segment' ? undefined : bars.find(({ members }) => ends.some((end) => members.has(end)));
		const other = bar && terminals.find(({ id }) => ends.includes(id) && !bar.members.has(id));
		return other ? [distance(onBar(bar, other.at), other.at)] : [];
	});
	return Math.min(MOST_MM, ...runs.map((mm) => mm * 0.55));
}

function glyphOf(link: Link): Glyph {
	switch (link.kind) {
		case 'battery':
			return battery;
		case 'load':
			return load;
		case 'source':
			return source(link.blocksReverse);
		case 'protective':
			return link.device.kind === 'fuse' ? fuse : breaker;
		case 'switch':
			return contact;
		case 'shunt':
			return shunt;
		case 'segment':
			return () => [];
	}
}

/** Terminals where they are; points inside in the middle of what they are joined to. */
function placesOf({ links, terminals, box }: PartDescription): ReadonlyMap<string, End> {
	const places = new Map<string, End>(terminals.map(({ id, at, side }) => [id, { at, side }]));
	const centre: Point = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
	const inner = new Set(links.flatMap(endsOf).filter((end) => end.startsWith('@')));
	for (const end of inner) {
		const joined = links.filter((link) => endsOf(link).includes(end)).flatMap(endsOf);
		const known = terminals.filter(({ id }) => joined.includes(id));
		places.set(end, { at: known.length === 0 ? centre : middleOf(known, centre), side: null });
	}
	return places;
}

/** Half way between the terminals and the middle of the part, so that there is room for a symbol on either side. */
function middleOf(terminals: readonly Terminal[], centre: Point): Point {
	const mean = (axis: 'x' | 'y') => terminals.reduce((sum, { at }) => sum + at[axis], 0) / terminals.length;
	return { x: (mean('x') + centre.x) / 2, y: (mean('y') + centre.y) / 2 };
}

/** How far into the part a way between two terminals of one side goes; ways after the first go deeper. */
function depthOf(part: PartDescription, index: number): number {
	const { box, terminals } = part;
	const words = symbolWords(part);
	const height = box.maxY - box.minY;
	const top = Math.max(...terminals.map(({ at, side }) => (side === 'north' ? at.y : box.minY)));
	const room = words ? words.minY - top : height * 0.6;
	return Math.max(10, Math.min(room * 0.55, 60) + index * 14);
}

/** What is left of the body beside terminals and words. */
function areaOf(part: PartDescription): Box {
	const { box, terminals } = part;
	const words = symbolWords(part);
	const south = Math.min(box.maxY, ...terminals.filter(({ side }) => side === 'south').map(({ at }) => at.y));
	const north = Math.max(box.minY, ...terminals.filter(({ side }) => side === 'north').map(({ at }) => at.y));
	return { minX: box.minX, maxX: box.maxX, minY: north, maxY: words && words.minY > north + 30 ? Math.min(words.minY, south) : south };
}

/** Metal between two terminals of a converter: a line along them. */
function throughLead({ terminals }: PartDescription, link: Link): Primitive[] {
	const [a, b] = endsOf(link).map((end) => terminals.find(({ id }) => id === end));
	return a && b ? [lead(a.at, b.at)] : [];
}

/** A stud on the metal of the craft: the sign hangs from it. */
function hanging(places: ReadonlyMap<string, End>, ends: readonly string[]): Primitive[] {
	const at = places.get(ends.find((end) => !isOutside(end))!)?.at;
	if (!at) return [];
	return chassis(30).map((shape) =>
		shape.kind === 'polyline' ? { ...shape, points: shape.points.map(({ x, y }) => ({ x: x + at.x, y: y + at.y })) } : shape
	);
}
