/** Stand-in for the drawing until it is there. */
import { itemKey, studKey, type Diagram, type ItemKey } from '#core/diagram';
import type { DrawnItem, Scene } from '#core/drawing';
import { boxOfPoints, inflateBox, unionBoxes, type Box } from '#core/geometry';
import { circle, placePrimitives, polyline, text } from '#core/graphics';
import { partBox, place, placedTerminal, poseOf } from '#core/layout';
import { describe } from '#core/parts';
import { elbow } from './elbow.ts';

let last = new Map<ItemKey, { sig: string; item: DrawnItem }>();

export function composeScene(diagram: Diagram): Scene {
	const items = new Map<ItemKey, DrawnItem>();
	const next = new Map<ItemKey, { sig: string; item: DrawnItem }>();
	const keep = (key: ItemKey, sig: string, make: () => DrawnItem): void => {
		const old = last.get(key);
		const item = old && old.sig === sig ? old.item : make();
		next.set(key, { sig, item });
		items.set(key, item);
	};
	const parts = Object.keys(diagram.parts).sort((a, b) => Number(a in diagram.mounts) - Number(b in diagram.mounts));
	for (const id of parts) {
		const part = diagram.parts[id]!;
		const pose = poseOf(diagram, id)!;
		const key = itemKey('part', id);
		keep(key, JSON.stringify([part, pose]), () => {
			const body = partBox(diagram, id)!;
			const terminals = describe(part).terminals.map((t) => ({
				key: itemKey('stud', studKey({ part: id, terminal: t.id })),
				at: place(t.at, pose),
				radiusMm: 5
			}));
			return {
				key,
				box: inflateBox(body, 20),
				primitives: [
					...placePrimitives(describe(part).outline(), pose.at, pose.turn),
					...terminals.map(({ at }) => circle(at.x, at.y, 5, { fill: 'metal', stroke: 'metal-dark', width: 1 }))
				],
				labels: [text((body.minX + body.maxX) / 2, body.maxY + 10, part.label, 12, { halo: 'paper' })],
				body,
				route: null,
				widthMm: 0,
				terminals
			};
		});
	}
	for (const [id, conductor] of Object.entries(diagram.conductors)) {
		const from = placedTerminal(diagram, conductor.from);
		const to = placedTerminal(diagram, conductor.to);
		if (!from || !to) continue;
		const key = itemKey('conductor', id);
		keep(key, JSON.stringify([conductor, from.at, to.at]), () => {
			const route = conductor.bends ? [from.at, ...conductor.bends, to.at] : elbow(from.at, from.side, to.at, to.side);
			return {
				key,
				box: inflateBox(boxOfPoints(route), 5),
				primitives: [
					polyline(route, { stroke: 'ink', width: 7, round: 10 }),
					polyline(route, { stroke: 'conductor:red', width: 5, round: 10 })
				],
				labels: [],
				body: null,
				route,
				widthMm: 6,
				terminals: []
			};
		});
	}
	last = next;
	const mounted = (key: ItemKey): number => (key.startsWith('conductor') ? 1 : key.slice(5) in diagram.mounts ? 2 : 0);
	const order = [...items.keys()].sort((a, b) => mounted(a) - mounted(b));
	const bounds = [...items.values()].reduce<Box | null>((all, { box }) => (all ? unionBoxes(all, box) : box), null);
	return { items, order, bounds };
}
