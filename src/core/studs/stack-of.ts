/** Sizes a stud's stack: from an order of things to layers in millimetres. */
import { terminalRef, type Diagram, type StackItem, type StudKey } from '#core/diagram';
import type { Terminal } from '#core/parts';
import { fullOrder, isHardware, landings } from './order.ts';
import { layerSize } from './size.ts';
import { findTerminal, fusePosts } from './terminal.ts';
import type { Layer, Stack } from './types.ts';
import { itemLabel, stackSentence } from './words.ts';

/** Where stacks may be, and what lands there: depends on where things go, not on what they are. */
export interface StackPlaces {
	readonly keys: readonly StudKey[];
	readonly landed: Map<StudKey, StackItem[]>;
}

/** In the order in which something lands on them. */
export function stackPlaces(diagram: Diagram): StackPlaces {
	const landed = landings(diagram);
	return { keys: [...new Set([...landed.keys(), ...Object.keys(diagram.stacks), ...fusePosts(diagram)])], landed };
}

/** Stacks of all studs and clamps with something on them, in the order of their places. */
export const stacksOf = (diagram: Diagram, { keys, landed }: StackPlaces = stackPlaces(diagram)): Stack[] =>
	keys.map((key) => stackOf(diagram, key, landed)).filter((stack) => stack !== undefined);

interface Known {
	readonly madeOf: readonly unknown[];
	readonly stack: Stack | undefined;
}

const known = new WeakMap<Terminal, Known>();

/**
 * The stack of one stud; undefined where there is no such stud or nothing on it. Kept as long as all it is made of
 * is the same: an edit costs only the studs it touches.
 */
export function stackOf(diagram: Diagram, key: StudKey, landed = landings(diagram)): Stack | undefined {
	const terminal = findTerminal(diagram, terminalRef(key));
	if (!terminal) return undefined;
	const madeOf = ingredients(diagram, key, landed.get(key) ?? []);
	const before = known.get(terminal);
	if (before && before.madeOf.length === madeOf.length && madeOf.every((value, i) => value === before.madeOf[i])) return before.stack;
	const stack = makeStack(diagram, terminal, key, landed);
	known.set(terminal, { madeOf, stack });
	return stack;
}

/** All that a stack says comes from these, and from its terminal. */
function ingredients({ conductors, parts, stacks }: Diagram, key: StudKey, landed: readonly StackItem[]): unknown[] {
	const madeOf: unknown[] = [key, stacks[key]];
	for (const item of landed) {
		if (item.kind === 'lug') madeOf.push(item.conductor, item.end, conductors[item.conductor]);
		else if (item.kind === 'block') madeOf.push(item.block, Object.hasOwn(parts, item.block) ? parts[item.block] : null);
	}
	return madeOf;
}

function makeStack(diagram: Diagram, terminal: Terminal, key: StudKey, landed: Map<StudKey, StackItem[]>): Stack | undefined {
	const order = fullOrder(diagram, key, landed);
	if (!order.some((item) => !isHardware(item))) return undefined;

	const assumed = terminal.kind === 'stud' ? assumedHardware(order) : [];
	const layers = layersOf(diagram, terminal, [...order, ...assumed]);
	const measures = terminal.kind === 'stud' ? studMeasures(terminal, layers) : { heightMm: 0, threadLeftMm: null };
	const stack = {
		key,
		terminal,
		layers,
		terminalCount: order.filter(({ kind }) => kind === 'lug' || kind === 'block').length,
		...measures,
		hardwareAssumed: assumed.length > 0
	};
	return { ...stack, sentence: stackSentence(stack) };
}

/** Washer, lock washer and nut close every stack; those not drawn above the last terminal are assumed. */
function assumedHardware(order: readonly StackItem[]): StackItem[] {
	const closing = order.slice(order.findLastIndex((item) => !isHardware(item)) + 1);
	if (closing.some(({ kind }) => kind === 'nut')) return [];
	const closed = new Set(closing.map(({ kind }) => kind));
	return (['washer', 'lock-washer', 'nut'] as const).filter((kind) => !closed.has(kind)).map((kind) => ({ kind }));
}

function layersOf(diagram: Diagram, terminal: Terminal, items: readonly StackItem[]): Layer[] {
	let bottomMm = 0;
	return items.map((item) => {
		const { thicknessMm, widthMm } = layerSize(diagram, terminal, item);
		const gauge = item.kind === 'lug' ? diagram.conductors[item.conductor]!.gauge : null;
		const layer = {
			item,
			gauge,
			label: itemLabel(diagram, terminal.kind, item),
			bottomMm,
			thicknessMm,
			widthMm,
			conducts: !isHardware(item)
		};
		bottomMm += thicknessMm;
		return layer;
	});
}

function studMeasures({ usableLengthMm }: Terminal, layers: readonly Layer[]) {
	const nut = layers.findLast(({ item }) => item.kind === 'nut')!;
	const heightMm = nut.bottomMm;
	return { heightMm, threadLeftMm: usableLengthMm === null ? null : usableLengthMm - heightMm - nut.thicknessMm };
}
