/**
 * "Arrange for me": parts in layers along the way the current takes. What is locked, grouped, or in an area stays where
 * it was put; a block goes with the stud it sits on. The layers are worked out by ELK, in a worker of its own.
 */
import { areaBox, areaOfPart, compose, moveEach, reroute, withBlocks, type Command, type Diagram, type PartId } from '#core/diagram';
import { EMPTY_BOX, boxHeight, boxWidth, inflateBox, snap, translateBox, unionBoxes, type Box, type Point } from '#core/geometry';
import { partBox, placedTerminal } from '#core/layout';
import { shiftToFree } from './free-place.ts';
import { GRID_MM } from './new-part.ts';

/** Room for a part's name and for conductors to leave it. */
const MARGIN_MM = 30;
/** Between what is arranged and what stays. */
const CLEAR_MM = 80;

/** As ELK's JSON has it (elk-api.d.ts); lengths are millimetres. */
export interface ArrangeGraph {
	readonly id: string;
	readonly layoutOptions: Readonly<Record<string, string>>;
	readonly children: readonly ArrangeNode[];
	readonly edges: readonly { readonly id: string; readonly sources: readonly string[]; readonly targets: readonly string[] }[];
}

interface ArrangeNode {
	readonly id: string;
	readonly width: number;
	readonly height: number;
	readonly layoutOptions: Readonly<Record<string, string>>;
	readonly ports: readonly {
		readonly id: string;
		readonly x: number;
		readonly y: number;
		readonly width: number;
		readonly height: number;
		readonly layoutOptions: Readonly<Record<string, string>>;
	}[];
}

/** Where ELK put each part: the upper left corner of its node. */
export type Places = ReadonlyMap<PartId, Point>;

const OPTIONS: Readonly<Record<string, string>> = {
	'elk.algorithm': 'layered',
	'elk.direction': 'RIGHT',
	'elk.edgeRouting': 'ORTHOGONAL',
	'elk.spacing.nodeNode': '60',
	'elk.layered.spacing.nodeNodeBetweenLayers': '140',
	'elk.spacing.edgeNode': '25',
	'elk.spacing.edgeEdge': '15',
	'elk.layered.cycleBreaking.strategy': 'DEPTH_FIRST',
	'elk.layered.considerModelOrder.strategy': 'NODES_AND_EDGES',
	'elk.separateConnectedComponents': 'true',
	'elk.spacing.componentComponent': '120',
	'elk.padding': '[top=0,left=0,bottom=0,right=0]'
};

/** Parts that may be moved, each with the blocks on it. */
export function freeParts(diagram: Diagram): PartId[] {
	return Object.keys(diagram.parts).filter((id) => {
		const { locked, group } = diagram.parts[id]!;
		return !locked && group === undefined && !Object.hasOwn(diagram.mounts, id) && areaOfPart(diagram, id) === null;
	});
}

/** What a part takes up: its body, that of the blocks on it, and a margin. */
function nodeBox(diagram: Diagram, id: PartId): Box {
	const bodies = [...withBlocks(diagram, [id])].flatMap((each) => partBox(diagram, each) ?? []);
	return inflateBox(bodies.reduce(unionBoxes, EMPTY_BOX), MARGIN_MM);
}

const SIDES = { north: 'NORTH', south: 'SOUTH', east: 'EAST', west: 'WEST' } as const;

export function arrangeGraph(diagram: Diagram): ArrangeGraph {
	const free = freeParts(diagram);
	const carrier = new Map(free.flatMap((id) => [...withBlocks(diagram, [id])].map((each) => [each, id] as const)));
	const edges = Object.entries(diagram.conductors).flatMap(([id, { from, to }]) => {
		const [a, b] = [carrier.get(from.part), carrier.get(to.part)];
		if (a === undefined || b === undefined || a === b) return [];
		return [{ id, sources: [`${id}/from`], targets: [`${id}/to`] }];
	});
	const drawn = new Set(edges.map(({ id }) => id));
	const children = free.map((id): ArrangeNode => {
		const box = nodeBox(diagram, id);
		const ports = Object.entries(diagram.conductors).flatMap(([conductor, ends]) =>
			(['from', 'to'] as const).flatMap((end) => {
				const placed = drawn.has(conductor) && carrier.get(ends[end].part) === id ? placedTerminal(diagram, ends[end]) : undefined;
				if (!placed) return [];
				// ELK wants a port on the edge of its node.
				const { at, side } = placed;
				const x = side === 'east' ? boxWidth(box) : side === 'west' ? 0 : at.x - box.minX;
				const y = side === 'south' ? boxHeight(box) : side === 'north' ? 0 : at.y - box.minY;
				return [{ id: `${conductor}/${end}`, x, y, width: 0, height: 0, layoutOptions: { 'elk.port.side': SIDES[side] } }];
			})
		);
		return { id, width: boxWidth(box), height: boxHeight(box), layoutOptions: { 'elk.portConstraints': 'FIXED_POS' }, ports };
	});
	return { id: 'diagram', layoutOptions: OPTIONS, children, edges };
}

/**
 * What takes the parts to these places, as one step; null where nothing would move. The whole keeps its upper left
 * corner, and makes way for what stays.
 */
export function arrangeCommand(diagram: Diagram, places: Places): Command | null {
	const before = new Map([...places.keys()].map((id) => [id, nodeBox(diagram, id)]));
	if (before.size === 0) return null;
	const whole = [...before.values()].reduce(unionBoxes, EMPTY_BOX);
	const target = (id: PartId): Box =>
		translateBox(before.get(id)!, { x: places.get(id)!.x - before.get(id)!.minX, y: places.get(id)!.y - before.get(id)!.minY });
	const arranged = [...before.keys()].map(target).reduce(unionBoxes, EMPTY_BOX);
	const corner = { x: whole.minX - arranged.minX, y: whole.minY - arranged.minY };
	const moving = withBlocks(diagram, places.keys());
	const staying = [
		...Object.keys(diagram.parts)
			.filter((id) => !moving.has(id))
			.flatMap((id) => partBox(diagram, id) ?? []),
		...Object.values(diagram.areas).map(areaBox)
	];
	const aside = shiftToFree([translateBox(arranged, corner)], staying, CLEAR_MM);
	const moves: Record<PartId, Point> = {};
	for (const [id, box] of before) {
		const to = places.get(id)!;
		const { at } = diagram.parts[id]!;
		const shift = { x: to.x - box.minX + corner.x + aside.x, y: to.y - box.minY + corner.y + aside.y };
		const by = { x: snap(at.x + shift.x, GRID_MM) - at.x, y: snap(at.y + shift.y, GRID_MM) - at.y };
		if (by.x !== 0 || by.y !== 0) moves[id] = by;
	}
	if (Object.keys(moves).length === 0) return null;
	const arrange = moveEach({ moves, verb: 'arrange' });
	const bent = Object.entries(diagram.conductors).flatMap(([id, { bends, locked }]) => (bends !== null && !locked ? [id] : []));
	return bent.length === 0 ? arrange : compose(arrange.label, [reroute({ conductors: bent }), arrange]);
}
