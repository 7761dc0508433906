/** Which way everything on a stud leaves it, and from where that is best seen. */
import { terminalRef, type Diagram, type PartId, type StudKey } from '#core/diagram';
import type { Side } from '#core/geometry';
import { placedTerminal, sideToward } from '#core/layout';
import { describe } from '#core/parts';
import { planView, type Stack } from '#core/studs';

/** As it appears from the side chosen: to the left or right, toward the one who looks, or away. */
export type Direction = 'left' | 'right' | 'near' | 'far';

const SIDES = ['south', 'east', 'north', 'west'] as const;

/** Left of someone who stands at this side of the stud and looks at it. */
const LEFT_OF: Readonly<Record<Side, Side>> = { south: 'west', east: 'south', north: 'east', west: 'north' };
const OPPOSITE: Readonly<Record<Side, Side>> = { south: 'north', north: 'south', east: 'west', west: 'east' };

export interface Directions {
	readonly seenFrom: Side;
	/** Of lugs and plates, by index of the layer. */
	readonly of: ReadonlyMap<number, Direction>;
}

/** The side from which most leave across, and of two such sides the one from which most leave to the left, away from the labels. */
export function directionsOf(diagram: Diagram, stack: Stack): Directions {
	const sides = new Map<number, Side>();
	for (const lug of planView(diagram, stack).lugs) sides.set(lug.index, lug.side);
	stack.layers.forEach(({ item }, index) => {
		const side = item.kind === 'block' ? blockSide(diagram, stack.key, item.block) : null;
		if (side) sides.set(index, side);
	});
	const across = (from: Side) => [...sides.values()].filter((side) => side === LEFT_OF[from] || side === OPPOSITE[LEFT_OF[from]]).length;
	const left = (from: Side) => [...sides.values()].filter((side) => side === LEFT_OF[from]).length;
	const seenFrom = SIDES.reduce<Side>(
		(best, from) => (across(from) * 100 + left(from) > across(best) * 100 + left(best) ? from : best),
		'south'
	);
	return { seenFrom, of: new Map([...sides].map(([index, side]) => [index, seen(side, seenFrom)])) };
}

function seen(side: Side, from: Side): Direction {
	if (side === from) return 'near';
	if (side === OPPOSITE[from]) return 'far';
	return side === LEFT_OF[from] ? 'left' : 'right';
}

/** The side to which a part mounted by its plate hangs over. */
function blockSide(diagram: Diagram, key: StudKey, block: PartId): Side | null {
	const here = placedTerminal(diagram, terminalRef(key));
	if (!here || !Object.hasOwn(diagram.parts, block)) return null;
	const posts = describe(diagram.parts[block]!).terminals.filter(({ mountingPlate }) => !mountingPlate);
	const at = posts.flatMap(({ id }) => placedTerminal(diagram, { part: block, terminal: id })?.at ?? []);
	if (at.length === 0) return null;
	const middle = { x: at.reduce((sum, { x }) => sum + x, 0) / at.length, y: at.reduce((sum, { y }) => sum + y, 0) / at.length };
	const dx = middle.x - here.at.x;
	const dy = middle.y - here.at.y;
	if (Math.hypot(dx, dy) < 1e-6) return sideToward(here, middle);
	if (Math.abs(dx) > Math.abs(dy)) return dx > 0 ? 'east' : 'west';
	return dy > 0 ? 'south' : 'north';
}
