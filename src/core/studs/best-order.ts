/** The best legal order of what sits on a stud. */
import { areaMm2 } from '#core/conductors';
import type { CaseId, Diagram, StackItem } from '#core/diagram';
import { faceOhm, stackHeatW, type TerminalCurrents } from './joints.ts';
import { obstaclesOf, type Obstacle } from './obstacles.ts';
import { isHardware } from './order.ts';
import { reliefsOf, type Relief } from './reliefs.ts';
import type { Layer, Stack } from './types.ts';
import { LARGEST_RING_MM2 } from './words.ts';

/** Worth changing an order for: this many times the heat of the best one, and this many watts more. Common practice, no source. */
const HEAT_RATIO = 1.3;
const HEAT_W = 0.5;
export const isWorthwhile = (drawnW: number, bestW: number): boolean => drawnW > HEAT_RATIO * bestW && drawnW - bestW > HEAT_W;

/** A larger lug above a smaller one that carries a fifth of its current or less. Common practice, no source. */
const CURRENT_RATIO = 5;
/** Below this the pads are small and the force is spread well enough. */
const SMALL_A = 10;

/** Joint heat of a stack as it lies, watts, in its hottest case; drawn hardware in its way not counted. */
export function drawnHeatW({ terminal: { thread } }: Stack, { byCase }: TerminalCurrents): number {
	const ohm = thread === null ? 0 : faceOhm(thread);
	return Math.max(0, ...byCase.map(({ injectedA }) => stackHeatW(injectedA, ohm)));
}

/** All orders are tried up to this many things on a stud. */
const EXACT_UP_TO = 6;

export interface Arrangement {
	/** What sits on the stud from the seat up, with the hardware that is drawn on top. */
	readonly order: readonly StackItem[];
	readonly labels: readonly string[];
	/** Whether lugs, plates and hardware lie otherwise than drawn. */
	readonly changes: boolean;
	/** Joint heat as drawn (hardware in its way not counted) and in the best order, watts, each in its hottest case. */
	readonly drawnW: number;
	readonly bestW: number;
	/** Case in which the drawn order is hottest. */
	readonly caseId: CaseId | null;
	/** Why this stud cannot hold all of it even so; empty where it can. */
	readonly obstacles: readonly Obstacle[];
	/** What would make room, shortest first. */
	readonly reliefs: readonly Relief[];
}

interface Item {
	readonly layer: Layer;
	readonly areaMm2: number | null;
	/** By case. */
	readonly injectedA: readonly number[];
	readonly greatestA: number;
}

/**
 * The order with the least heat in its hottest case, among those that are allowed: hardware on top, a block's own fuse
 * lowest on its post, no plate on a ring, no wide pad on a narrow one where its heat hardly matters. Where orders are
 * equally cool, the largest current lies lowest, then the widest pad.
 */
export function bestOrder(diagram: Diagram, stack: Stack, currents: TerminalCurrents): Arrangement {
	const items = currents.layers.map((index, position) => itemOf(diagram, stack.layers[index]!, currents, position));
	const ohm = stack.terminal.thread === null ? 0 : faceOhm(stack.terminal.thread);
	const heats = (order: readonly Item[]): number[] =>
		currents.byCase.map((_, index) =>
			stackHeatW(
				order.map(({ injectedA }) => injectedA[index]!),
				ohm
			)
		);
	const best = coolest(items, heats);

	const drawn = heats(items);
	const chosen = heats(best);
	const hottest = drawn.reduce((hot, watts, index) => (watts > drawn[hot]! ? index : hot), 0);
	const fuse = stack.layers.filter(({ item }) => item.kind === 'fuse');
	const layers = [...fuse, ...best.map(({ layer }) => layer)];
	const order = [...layers.map(({ item }) => item), ...closingHardware(diagram.stacks[stack.key] ?? [])];
	const obstacles = obstaclesOf(diagram, stack);
	return {
		order,
		labels: layers.map(({ label }) => label),
		changes: JSON.stringify(order) !== JSON.stringify(asDrawn(diagram, stack)),
		drawnW: drawn[hottest] ?? 0,
		bestW: Math.max(0, ...chosen),
		caseId: currents.byCase[hottest]?.caseId ?? null,
		obstacles,
		reliefs:
			obstacles.length === 0
				? []
				: reliefsOf(diagram, stack, obstacles, (layer) => items.find((item) => item.layer === layer)?.greatestA ?? 0)
	};
}

function itemOf(diagram: Diagram, layer: Layer, { byCase }: TerminalCurrents, position: number): Item {
	const injectedA = byCase.map((values) => values.injectedA[position]!);
	const area = layer.item.kind === 'lug' ? areaMm2(diagram.conductors[layer.item.conductor]!.gauge) : null;
	return { layer, areaMm2: area, injectedA, greatestA: Math.max(0, ...injectedA.map(Math.abs)) };
}

/** One of each kind that is drawn, washer first and nut last. */
const closingHardware = (drawn: readonly StackItem[]): StackItem[] =>
	(['washer', 'lock-washer', 'nut'] as const).filter((kind) => drawn.some((item) => item.kind === kind)).map((kind) => ({ kind }));

/** The stack without the hardware that was only assumed. */
function asDrawn(diagram: Diagram, { key, layers }: Stack): StackItem[] {
	const drawnHardware = (diagram.stacks[key] ?? []).filter(isHardware).length;
	let hardware = 0;
	return layers.map(({ item }) => item).filter((item) => !isHardware(item) || ++hardware <= drawnHardware);
}

const isAllowed = (order: readonly Item[]): boolean =>
	order.every(({ layer }, index) => {
		const lower = order[index - 1];
		return layer.item.kind !== 'block' || !lower || lower.areaMm2 === null || lower.areaMm2 > LARGEST_RING_MM2;
	});

/** Wide pads on narrow ones that hardly carry anything: force is concentrated where it does no good. */
export const padsBridged = (order: readonly Item[]): number =>
	order.filter((upper, index) => {
		const lower = order[index - 1];
		if (!lower || upper.areaMm2 === null || lower.areaMm2 === null || upper.areaMm2 <= lower.areaMm2) return false;
		return upper.injectedA.some((a, i) => Math.abs(a) >= SMALL_A && Math.abs(a) >= CURRENT_RATIO * Math.abs(lower.injectedA[i]!));
	}).length;

function coolest(items: readonly Item[], heats: (order: readonly Item[]) => number[]): readonly Item[] {
	const bySize = items.toSorted((a, b) => b.greatestA - a.greatestA || b.layer.widthMm - a.layer.widthMm);
	const orders = (items.length <= EXACT_UP_TO ? [bySize, ...permutations(bySize)] : swapped(bySize, heats)).map((order) => ({
		order,
		allowed: isAllowed(order),
		bridged: padsBridged(order),
		heats: heats(order).toSorted((a, b) => b - a)
	}));
	const allowed = orders.filter((candidate) => candidate.allowed);
	const open = allowed.length > 0 ? allowed : orders;
	const least = Math.min(...open.map(({ heats }) => heats[0] ?? 0));
	const cool = open.filter(({ heats }) => !isWorthwhile(heats[0] ?? 0, least));
	return cool.reduce((best, other) => (isBetter(other, best) ? other : best)).order;
}

/** Fewer bridged pads, then less heat in the hottest case, in the next … A hair's breadth cooler is not cooler: the order by size is one people can remember. */
function isBetter(a: { bridged: number; heats: readonly number[] }, b: { bridged: number; heats: readonly number[] }): boolean {
	if (a.bridged !== b.bridged) return a.bridged < b.bridged;
	for (const [index, watts] of a.heats.entries()) {
		const other = b.heats[index]!;
		if (watts < other * (1 - 1e-9)) return true;
		if (watts > other * (1 + 1e-9)) return false;
	}
	return false;
}

function* permutations<Value>(items: readonly Value[]): Generator<readonly Value[]> {
	if (items.length < 2) yield [...items];
	else for (const [index, item] of items.entries()) for (const rest of permutations(items.toSpliced(index, 1))) yield [item, ...rest];
}

/** From the order by size, exchanging pairs for as long as that cools the stack; all orders seen on the way. */
function swapped(start: readonly Item[], heats: (order: readonly Item[]) => number[]): (readonly Item[])[] {
	const seen = [start];
	for (let current = start, improved = true; improved;) {
		improved = false;
		for (let i = 0; i < current.length; i++) {
			for (let j = i + 1; j < current.length; j++) {
				const other = current.with(i, current[j]!).with(j, current[i]!);
				seen.push(other);
				if (Math.max(...heats(other)) >= Math.max(...heats(current)) * (1 - 1e-9)) continue;
				current = other;
				improved = true;
			}
		}
	}
	return seen;
}
