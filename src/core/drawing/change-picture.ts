/** What a change does to the drawing, as a picture: what is new or other stands out of what stays. */
import { itemKey, parseItemKey, type Diagram, type ItemKey } from '#core/diagram';
import { boxHeight, boxOfPoints, boxWidth, inflateBox, isEmptyBox, unionBoxes, EMPTY_BOX, type Box } from '#core/geometry';
import { boxRect, polyline, svgOf, type Palette, type Primitive } from '#core/graphics';
import { composeScene } from './compose.ts';
import type { DrawnItem, Scene } from './types.ts';

/** Around what changed, mm. */
const MARGIN_MM = 40;
const RING_MM = 7;
const VEIL = 0.62;

/** Parts and conductors that are new, or not what they were, in the order of the diagram. */
export function changedItems(before: Diagram, after: Diagram): ItemKey[] {
	const parts = Object.keys(after.parts).filter((id) => before.parts[id] !== after.parts[id] || before.mounts[id] !== after.mounts[id]);
	const conductors = Object.keys(after.conductors).filter((id) => before.conductors[id] !== after.conductors[id]);
	return [...parts.map((id) => itemKey('part', id)), ...conductors.map((id) => itemKey('conductor', id))];
}

export interface Picture {
	/** A whole SVG document. */
	readonly svg: string;
	readonly widthMm: number;
	readonly heightMm: number;
}

/** Null where nothing that is drawn changed. `around` is shown too. */
export function pictureOfChange(before: Diagram, after: Diagram, palette: Palette, around: readonly ItemKey[] = []): Picture | null {
	const changed = changedItems(before, after);
	if (changed.length === 0) return null;
	const scene = composeScene(after);
	const region = regionOf(scene, [...changed, ...around]);
	if (isEmptyBox(region)) return null;
	const box = inflateBox(region, MARGIN_MM);
	const isChanged = new Set<ItemKey>(changed);
	const drawn = scene.order.map((key) => scene.items.get(key)!);
	const primitives = [
		...drawn.filter(({ key }) => !isChanged.has(key)).flatMap(allOf),
		boxRect(box, { fill: 'paper', opacity: VEIL }),
		...drawn.filter(({ key }) => isChanged.has(key)).flatMap(ringOf),
		...drawn.filter(({ key }) => isChanged.has(key)).flatMap(allOf)
	];
	return { svg: svgOf(primitives, box, palette), widthMm: boxWidth(box), heightMm: boxHeight(box) };
}

const allOf = ({ primitives, labels }: DrawnItem): readonly Primitive[] => [...primitives, ...labels];

/** Under what changed: a band around a part's body, and along a conductor. */
function ringOf({ body, route, widthMm }: DrawnItem): Primitive[] {
	if (route) return [polyline(route, { stroke: 'selection', width: widthMm + 2 * RING_MM, opacity: 0.55, cap: 'round', round: widthMm })];
	return body ? [boxRect(inflateBox(body, RING_MM), { fill: 'selection', opacity: 0.55, r: RING_MM })] : [];
}

/** Parts wholly; of conductors their ends come with the parts they are on. */
function regionOf(scene: Scene, keys: readonly ItemKey[]): Box {
	const boxes = keys.flatMap((key) => {
		const item = scene.items.get(key);
		if (!item) return [];
		return [parseItemKey(key).kind === 'part' ? item.box : routeBox(item)];
	});
	return boxes.reduce(unionBoxes, EMPTY_BOX);
}

const routeBox = ({ route, box }: DrawnItem): Box => (route ? boxOfPoints(route) : box);
