/** Diagram → drawing. */
import { itemKey, type Area, type Conductor, type ConductorId, type Diagram, type ItemKey, type PartId } from '#core/diagram';
import { isEmptyBox, oppositeSide, samePoint, unionBoxes, EMPTY_BOX, type Point, type Side } from '#core/geometry';
import { placedTerminal, poseOf } from '#core/layout';
import { buildNetwork, type Network, type Pole } from '#core/network';
import { createRouter, routeConductors, type Routes } from '#core/routing';
import { areaWords, drawArea } from './area.ts';
import { insulationColour, type Use } from './colours.ts';
import { drawConductor, tagWords } from './conductor.ts';
import { leaderEnd } from './leader.ts';
import { drawNote } from './note.ts';
import { drawPart } from './part.ts';
import { placedConductor, routeRequests } from './route-requests.ts';
import { placeTags, type Tag } from './tag.ts';
import { drawUnderlay } from './underlay.ts';
import type { DrawnItem, PartSymbols, Scene } from './types.ts';
import { reader, type Reader } from '#core/units';

export interface ComposeOptions {
	/** Routes of the conductors; worked out when left out. */
	readonly routes?: Routes;
	/** Pole of each conductor, for its colour; worked out when left out. */
	readonly poles?: ReadonlyMap<ConductorId, Pole> | undefined;
	/** Draws symbols in place of outlines. */
	readonly symbols?: PartSymbols | null | undefined;
}

/** All that an item was drawn from. Drawn anew only when one of them is another value. */
type Inputs = readonly unknown[];

const inputsOf = new WeakMap<DrawnItem, Inputs>();

/** The drawing of a diagram. Items of `previous` are kept where nothing about them changed, or the whole scene. */
export function composeScene(diagram: Diagram, options: ComposeOptions = {}, previous?: Scene): Scene {
	const routes = options.routes ?? routesOf(diagram);
	const poles = options.poles ?? conductorPoles(diagram, buildNetwork(diagram));

	const symbols = options.symbols ?? null;
	const items: DrawnItem[] = [];
	/** Figures are part of the drawing. */
	const forReader = reader();
	const keep = (key: ItemKey, inputs: Inputs, draw: () => DrawnItem) => {
		const before = previous?.items.get(key);
		const known = before && inputsOf.get(before);
		if (before && known && sameInputs(known, inputs)) {
			items.push(before);
			return;
		}
		const item = draw();
		inputsOf.set(item, inputs);
		items.push(item);
	};

	for (const [id, underlay] of Object.entries(diagram.underlays)) {
		const { at, widthPx, heightPx, mmPerPx } = underlay;
		keep(itemKey('underlay', id), [at.x, at.y, widthPx, heightPx, mmPerPx], () => drawUnderlay(id, underlay));
	}
	for (const [id, area] of areasBackToFront(diagram)) {
		const { label, at, widthMm, heightMm } = area;
		keep(itemKey('area', id), [label, at.x, at.y, widthMm, heightMm, areaWords(area), area.spaces.join(' ')], () => drawArea(id, area));
	}

	const bodies = items.length;
	const taken = sidesTaken(diagram, routes);
	for (const id of partsBackToFront(diagram)) {
		const part = diagram.parts[id]!;
		const pose = poseOf(diagram, id)!;
		const isMounted = Object.hasOwn(diagram.mounts, id);
		const sides = taken.get(id) ?? new Set<Side>();
		const words = [part.kind, part.label, part.params, forReader, symbols];
		const inputs = [...words, pose.at.x, pose.at.y, pose.turn, isMounted, [...sides].sort().join(' ')];
		keep(itemKey('part', id), inputs, () => drawPart(id, part, pose, { isMounted, taken: sides, symbols }));
	}

	const routed = Object.entries(diagram.conductors).flatMap(([id, conductor]): [ConductorId, Conductor, readonly Point[]][] => {
		const route = routes.get(id);
		return route ? [[id, conductor, route]] : [];
	});
	const tags = placeTags(
		routed.map(([id, conductor, route]) => [id, tagWords(conductor), route]),
		items.slice(bodies).map(({ box }) => box)
	);
	for (const [id, conductor, route] of routed) {
		const placed = placedConductor(diagram, id, conductor);
		const from = placed.from?.terminal;
		const to = placed.to?.terminal;
		const isBond = from?.role === 'chassis' || to?.role === 'chassis';
		const use: Use = isBond ? 'bond' : (poles.get(id) ?? 'floating');
		const colour = insulationColour(conductor, use, diagram);
		const tag: Tag | null = tags.get(id) ?? null;
		const { gauge, label } = conductor;
		const inputs = [forReader, symbols, gauge.system, gauge.size, label, use, colour, from?.thread, from?.kind, to?.thread, to?.kind];
		keep(itemKey('conductor', id), [...inputs, tag?.box.minX, tag?.box.minY, route], () =>
			drawConductor(id, conductor, route, { colour, use, tag, from, to, bare: symbols !== null })
		);
	}
	for (const [id, note] of Object.entries(diagram.notes)) {
		const target = leaderEnd(diagram, note, routes);
		const { text, at, widthMm } = note;
		keep(itemKey('note', id), [text, at.x, at.y, widthMm, target?.x, target?.y], () => drawNote(id, note, target));
	}
	return sceneOf(items, previous);
}

/** The largest first, so that one within another lies over it. */
const areasBackToFront = ({ areas }: Diagram): [string, Area][] =>
	Object.entries(areas).sort(([, a], [, b]) => b.widthMm * b.heightMm - a.widthMm * a.heightMm);

function routesOf(diagram: Diagram): Routes {
	const { requests, obstacles } = routeRequests(diagram);
	return routeConductors(requests, obstacles);
}

/** Composes one diagram after another, keeping routes and items from one to the next. */
export function sceneComposer(): (diagram: Diagram, options?: Pick<ComposeOptions, 'poles' | 'symbols'>) => Scene {
	const router = createRouter();
	let previous: Scene | undefined;
	let drawn: ({ diagram: Diagram; reader: Reader } & Pick<ComposeOptions, 'poles' | 'symbols'>) | null = null;
	return (diagram, { poles, symbols } = {}) => {
		const isSame = drawn?.poles === poles && drawn?.symbols === symbols && drawn?.reader === reader();
		if (previous && drawn && isSame && looksTheSame(drawn.diagram, diagram)) return previous;
		drawn = { diagram, poles, symbols, reader: reader() };
		const { requests, obstacles } = routeRequests(diagram);
		previous = composeScene(diagram, { routes: router.update(requests, obstacles), poles, symbols }, previous);
		return previous;
	};
}

/** Whether all that the drawing is made from is the same values. */
const looksTheSame = (a: Diagram, b: Diagram): boolean =>
	a.parts === b.parts &&
	a.conductors === b.conductors &&
	a.mounts === b.mounts &&
	a.areas === b.areas &&
	a.notes === b.notes &&
	a.underlays === b.underlays &&
	a.colourScheme === b.colourScheme &&
	a.system === b.system;

/** Sides of each part where a conductor leaves it, a block sits on it, or its host is. */
function sidesTaken(diagram: Diagram, routes: Routes): Map<PartId, Set<Side>> {
	const taken = new Map<PartId, Set<Side>>();
	const add = (id: PartId, side: Side) => taken.set(id, (taken.get(id) ?? new Set()).add(side));
	const addRun = (id: PartId, at: Point | undefined, toward: Point | undefined) => {
		if (!at || !toward) return;
		const level = Math.abs(toward.x - at.x) >= Math.abs(toward.y - at.y);
		add(id, level ? (toward.x > at.x ? 'east' : 'west') : toward.y > at.y ? 'south' : 'north');
	};
	for (const [id, { from, to }] of Object.entries(diagram.conductors)) {
		const route = routes.get(id);
		addRun(from.part, route?.[0], route?.[1]);
		addRun(to.part, route?.at(-1), route?.at(-2));
	}
	for (const [id, host] of Object.entries(diagram.mounts)) {
		const side = placedTerminal(diagram, host)?.side;
		if (!side) continue;
		add(host.part, side);
		add(id, oppositeSide(side));
	}
	return taken;
}

/** Parts that stand by themselves, then mounted blocks, each after the part it sits on. */
function partsBackToFront({ parts, mounts }: Diagram): PartId[] {
	const depth = (id: PartId): number => {
		let steps = 0;
		for (let host = mounts[id]?.part; host !== undefined && steps < 9; host = mounts[host]?.part) steps++;
		return steps;
	};
	return Object.keys(parts)
		.map((id) => ({ id, depth: depth(id) }))
		.sort((a, b) => a.depth - b.depth)
		.map(({ id }) => id);
}

/** Pole of each conductor: that of its ends, the told apart one where the other end hangs in the air. */
export function conductorPoles({ conductors }: Diagram, { poles, nodeOfEnd }: Network): Map<ConductorId, Pole> {
	const result = new Map<ConductorId, Pole>();
	for (const id of Object.keys(conductors)) {
		const nodes = nodeOfEnd.get(id);
		if (nodes) result.set(id, bothPoles(poles[nodes.from] ?? 'floating', poles[nodes.to] ?? 'floating'));
	}
	return result;
}

function bothPoles(a: Pole, b: Pole): Pole {
	if (a === b || b === 'floating') return a;
	return a === 'floating' ? b : 'shorted';
}

const sameInputs = (a: Inputs, b: Inputs): boolean => a.length === b.length && a.every((value, index) => sameInput(value, b[index]));

/** Routes worked out anew may be the same points. */
const sameInput = (a: unknown, b: unknown): boolean => Object.is(a, b) || (Array.isArray(a) && Array.isArray(b) && sameRoute(a, b));

const sameRoute = (a: readonly Point[], b: readonly Point[]): boolean =>
	a.length === b.length && a.every((point, index) => samePoint(point, b[index]!));

function sceneOf(items: readonly DrawnItem[], previous?: Scene): Scene {
	const order = items.map(({ key }) => key);
	if (
		previous &&
		order.length === previous.order.length &&
		items.every((item, index) => item === previous.items.get(previous.order[index]!))
	) {
		return previous;
	}
	// Pictures are no part of what is drawn.
	const drawn = items.filter(({ frame, primitives }) => !frame || primitives.length > 0);
	const bounds = drawn.reduce((box, item) => unionBoxes(box, item.box), EMPTY_BOX);
	return { items: new Map(items.map((item) => [item.key, item])), order, bounds: isEmptyBox(bounds) ? null : bounds };
}
