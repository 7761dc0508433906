/** Sizes a stud's stack: from an order of things to layers in millimetres. */
import { terminalRef, type Diagram, type StackItem, type StudKey } from '#core/diagram';
import { createMemory, type Memory } from '#core/memory';
import { describe, type Terminal } from '#core/parts';
import { fullOrder, isHardware, landings } from './order.ts';
import { layerSize } from './size.ts';
import { findTerminal, fusePosts } from './terminal.ts';
import type { Layer, Stack } from './types.ts';
import { itemLabel, stackSentence } from './words.ts';

/** Where stacks may be, and what lands there: depends on where things go, not on what they are. */
export interface StackPlaces {
	readonly keys: readonly StudKey[];
	/** By place. */
	readonly terminals: readonly Terminal[];
	readonly landed: ReadonlyMap<StudKey, readonly StackItem[]>;
}

/** In the order in which something lands on them. */
export function stackPlaces(diagram: Diagram): StackPlaces {
	const landed = landings(diagram);
	const places = [...new Set([...landed.keys(), ...Object.keys(diagram.stacks), ...fusePosts(diagram)])].flatMap((key) => {
		const terminal = findTerminal(diagram, terminalRef(key));
		return terminal ? [{ key, terminal }] : [];
	});
	return { keys: places.map(({ key }) => key), terminals: places.map(({ terminal }) => terminal), landed };
}

/** Stacks of all studs and clamps with something on them, in the order of their places. */
export function stacksOf(diagram: Diagram, places: StackPlaces = stackPlaces(diagram), memory: Memory = createMemory()): readonly Stack[] {
	const before = memory.recall(LATEST) as Latest | undefined;
	const stacks = before && isUntouched(before, diagram, places) ? before.stacks : lookedThrough(diagram, places, memory);
	memory.store(LATEST, { diagram, places, stacks } satisfies Latest);
	return stacks;
}

const LATEST = 'latest stacks';

interface Latest {
	readonly diagram: Diagram;
	readonly places: StackPlaces;
	readonly stacks: readonly Stack[];
}

/** Most edits change nothing that lies on a stud: to see that costs less than to look through all stacks. */
function isUntouched({ diagram: before, places }: Latest, after: Diagram, placesNow: StackPlaces): boolean {
	if (places !== placesNow || before.parts !== after.parts || before.stacks !== after.stacks) return false;
	if (before.conductors === after.conductors) return true;
	for (const id of Object.keys(after.conductors)) {
		const [a, b] = [before.conductors[id], after.conductors[id]!];
		if (a !== b && (a === undefined || a.gauge !== b.gauge || a.label !== b.label)) return false;
	}
	return true;
}

function lookedThrough(diagram: Diagram, { keys, terminals, landed }: StackPlaces, memory: Memory): readonly Stack[] {
	const stacks = memory.keepEach(
		'stack of each',
		keys,
		(key, i) => ingredients(diagram, key, terminals[i]!, landed.get(key)),
		(key, i) => makeStack(diagram, terminals[i]!, key, landed)
	);
	return memory.keepList(
		'stacks',
		stacks.filter((stack) => stack !== undefined)
	);
}

/** The stack of one stud; undefined where there is no such stud or nothing on it. */
export function stackOf(diagram: Diagram, key: StudKey, landed: StackPlaces['landed'] = landings(diagram)): Stack | undefined {
	const terminal = findTerminal(diagram, terminalRef(key));
	return terminal && makeStack(diagram, terminal, key, landed);
}

/** All that a stack says comes from these and from its key. */
function ingredients(
	{ conductors, parts, stacks }: Diagram,
	key: StudKey,
	terminal: Terminal,
	landed: readonly StackItem[] | undefined
): unknown[] {
	const madeOf: unknown[] = [terminal, stacks[key]];
	for (const item of landed ?? []) {
		if (item.kind === 'lug') {
			const { gauge, label } = conductors[item.conductor]!;
			madeOf.push(item.conductor, item.end, gauge, label);
		} else if (item.kind === 'block') {
			const block = Object.hasOwn(parts, item.block) ? parts[item.block]! : null;
			madeOf.push(item.block, block?.label, block && describe(block));
		}
	}
	return madeOf;
}

function makeStack(diagram: Diagram, terminal: Terminal, key: StudKey, landed: StackPlaces['landed']): Stack | undefined {
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
