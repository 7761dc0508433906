/** The least that would have to change for a stack to fit its stud. */
import type { Diagram, StackItem } from '#core/diagram';
import { millimetresText } from '#core/units';
import { obstaclesOf, type Obstacle } from './obstacles.ts';
import type { Layer, Stack } from './types.ts';

export type Relief =
	| { readonly kind: 'move'; readonly items: readonly StackItem[]; readonly text: string }
	| { readonly kind: 'longer-stud'; readonly byMm: number; readonly text: string }
	| { readonly kind: 'adapter'; readonly text: string }
	| { readonly kind: 'no-cover'; readonly text: string };

const MOST_MOVED = 3;
const MOST_SHOWN = 3;

/** Shortest first: whatever leaves the fewest terminals to move, those of little current before others. */
export function reliefsOf(
	diagram: Diagram,
	stack: Pick<Stack, 'terminal' | 'layers'>,
	obstacles: readonly Obstacle[],
	greatestA: (layer: Layer) => number
): Relief[] {
	const movable = stack.layers
		.filter(({ item }) => item.kind === 'lug' || item.kind === 'block')
		.sort((a, b) => greatestA(a) - greatestA(b));
	const kinds = new Set(obstacles.map(({ kind }) => kind));
	const short = obstacles.find(({ kind }) => kind === 'thread-too-short');
	const isHigh = short !== undefined || kinds.has('cover-does-not-close');
	return [
		...moves(diagram, stack, movable, greatestA),
		...(short && kinds.size === 1
			? [
					{
						kind: 'longer-stud' as const,
						byMm: short.excess,
						text: `Use a part whose stud is ${millimetresText(short.excess, 2)} longer.`
					}
				]
			: []),
		...(isHigh && movable.length > 1
			? [{ kind: 'adapter' as const, text: 'Put an adapter post beside it for a second landing place.' }]
			: []),
		...(kinds.size === 1 && (kinds.has('cable-too-thick') || kinds.has('cover-does-not-close'))
			? [{ kind: 'no-cover' as const, text: 'Use a stud without this cover, with a boot over it.' }]
			: [])
	];
}

function moves(
	diagram: Diagram,
	stack: Pick<Stack, 'terminal' | 'layers'>,
	movable: readonly Layer[],
	greatestA: (layer: Layer) => number
): Relief[] {
	const sumA = (set: readonly Layer[]) => set.reduce((sum, layer) => sum + greatestA(layer), 0);
	for (let count = 1; count <= Math.min(MOST_MOVED, movable.length - 1); count++) {
		const enough = combinations(movable, count)
			.filter((set) => obstaclesOf(diagram, stack, new Set(set)).length === 0)
			.sort((a, b) => sumA(a) - sumA(b));
		if (enough.length === 0) continue;
		return enough.slice(0, MOST_SHOWN).map((set) => ({
			kind: 'move',
			items: set.map(({ item }) => item),
			text: `Move the ${set.map(({ label }) => label).join(' and the ')} to another stud.`
		}));
	}
	return [];
}

function combinations<Value>(values: readonly Value[], count: number): Value[][] {
	if (count === 0) return [[]];
	return values.flatMap((value, index) => combinations(values.slice(index + 1), count - 1).map((rest) => [value, ...rest]));
}
