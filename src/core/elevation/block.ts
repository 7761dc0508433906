/** A cube fuse on its post, and the part that a plate on this stud belongs to. */
import type { Diagram, PartId } from '#core/diagram';
import type { Primitive } from '#core/graphics';
import { describe } from '#core/parts';
import type { Layer } from '#core/studs';
import type { Direction } from './directions.ts';
import { at, breakLine, COPPER, line, MOULDING, polyline, slab } from './outline.ts';

/** A terminal-mounted fuse, its element in the window, on the post's insulating sleeve. */
export function drawFuse({ bottomMm, thicknessMm, widthMm }: Layer): Primitive[] {
	const half = widthMm / 2;
	const top = bottomMm + thicknessMm;
	const cap = Math.min(1.4, thicknessMm / 5);
	const middle = bottomMm + thicknessMm / 2;
	return [
		slab(-half, half, bottomMm, top, { fill: 'fuse', stroke: 'case-edge', width: 0.3, r: 0.5 }),
		slab(-half, half, bottomMm, bottomMm + cap, COPPER),
		slab(-half, half, top - cap, top, COPPER),
		polyline(
			[
				at(half * 0.75, bottomMm + cap),
				at(half * 0.75, middle - 1),
				at(half * 0.55, middle),
				at(half * 0.75, middle + 1),
				at(half * 0.75, top - cap)
			],
			{
				stroke: 'metal-dark',
				width: 0.5
			}
		)
	];
}

/** The insulating sleeve that keeps fuse and lug off the post's metal. */
export const drawSleeve = (majorMm: number, z1: number, z2: number): Primitive[] =>
	[-1, 1].map((side) => slab(side * (majorMm / 2), side * (majorMm / 2 + 0.8), z1, z2, { fill: 'case-edge', opacity: 0.45 }));

/** Heights of body, post and fuse beside the stud, where there is room to show them: common sizes, makers differ. */
const BODY = { fromMm: 15, highMm: 9, fuseMm: 25, fuseHighMm: 10, postHighMm: 16 } as const;
const LEAST_REACH_MM = 24;

/** A mounted part as it hangs over: millimetres from the stud's axis. */
export interface Overhang {
	readonly leastMm: number;
	readonly wholeMm: number;
	/** Its nearest post. */
	readonly postMm: number;
	readonly hasFuse: boolean;
}

const UNKNOWN: Overhang = { leastMm: LEAST_REACH_MM, wholeMm: 58, postMm: 40, hasFuse: false };

export function overhangOf({ parts }: Diagram, block: PartId): Overhang {
	if (!Object.hasOwn(parts, block)) return UNKNOWN;
	const { terminals, links, box } = describe(parts[block]!);
	const plate = terminals.find(({ mountingPlate }) => mountingPlate);
	const posts = terminals.filter(({ mountingPlate }) => !mountingPlate);
	if (!plate || posts.length === 0) return UNKNOWN;
	return {
		leastMm: LEAST_REACH_MM,
		wholeMm: box.maxY - plate.at.y,
		postMm: Math.min(...posts.map(({ at }) => at.y - plate.at.y)),
		hasFuse: posts.some(({ fuseInStack }) => links.some(({ id }) => id === fuseInStack))
	};
}

const showsPost = ({ postMm }: Overhang, reachMm: number): boolean => reachMm >= postMm + BODY.fuseMm / 2;

export const blockTopMm = ({ bottomMm }: Layer, overhang: Overhang, reachMm: number): number =>
	bottomMm + BODY.highMm + (showsPost(overhang, reachMm) ? BODY.postHighMm : 1);

/** The plate on this stud with the part it belongs to hanging over on one side. */
export function drawBlock(layer: Layer, direction: Direction, reachMm: number, overhang: Overhang): Primitive[] {
	const { bottomMm: z, thicknessMm, widthMm } = layer;
	const plate = (x1: number, x2: number) => slab(x1, x2, z, z + thicknessMm, { ...COPPER, r: 0.4 });
	if (direction === 'near' || direction === 'far') {
		// In front of the stack only its outline, so that the stack stays in sight.
		const body = slab(
			-17,
			17,
			z - 1,
			z + BODY.highMm,
			direction === 'far' ? { ...MOULDING, opacity: 0.6 } : { stroke: MOULDING.stroke, width: MOULDING.width, dash: [1.2, 0.8] }
		);
		return direction === 'far' ? [body, plate(-widthMm / 2, widthMm / 2)] : [plate(-widthMm / 2, widthMm / 2), body];
	}
	const side = direction === 'left' ? -1 : 1;
	const end = Math.min(overhang.wholeMm, reachMm);
	const post = side * overhang.postMm;
	return [
		plate((-side * widthMm) / 2, side * Math.min(end, overhang.postMm)),
		slab(side * BODY.fromMm, side * end, z - 1, z + BODY.highMm, { ...MOULDING, r: 1 }),
		line(side * BODY.fromMm, -(z + thicknessMm / 2), side * end, -(z + thicknessMm / 2), {
			stroke: 'metal-dark',
			width: 0.3,
			dash: [1, 0.8]
		}),
		...(showsPost(overhang, reachMm)
			? [
					slab(post - 2.6, post + 2.6, z + BODY.highMm, z + BODY.highMm + BODY.postHighMm, {
						fill: 'metal',
						stroke: 'metal-dark',
						width: 0.25
					}),
					...(overhang.hasFuse
						? drawFuse({ ...layer, bottomMm: z + BODY.highMm, thicknessMm: BODY.fuseHighMm, widthMm: BODY.fuseMm }).map((shape) =>
								moved(shape, post)
							)
						: [])
				]
			: []),
		...(end < overhang.wholeMm ? [breakLine(side * end, z - 1, z + BODY.highMm, side)] : [])
	];
}

function moved(shape: Primitive, by: number): Primitive {
	return shape.kind === 'polyline'
		? { ...shape, points: shape.points.map(({ x, y }) => ({ x: x + by, y })) }
		: { ...shape, x: shape.x + by };
}
