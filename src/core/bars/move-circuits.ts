/** Circuits of a bus put on other studs of it, fuses and names with them. */
import {
	reconnectConductor,
	reorderStack,
	setParams,
	studKey,
	mountBlock,
	type Command,
	type Diagram,
	type Param,
	type PartId
} from '#core/diagram';
import { describe, fieldMeta } from '#core/parts';
import type { Bar } from './bar.ts';

/** Commands that bring to each slot the circuit of slot `order[slot]`. */
export function moveCircuits(diagram: Diagram, part: PartId, { slots }: Bar, order: readonly number[]): Command[] {
	const target = new Map(order.map((from, slot) => [slots[from]!.terminal, slots[slot]!.terminal]));
	const moves = (terminal: string): boolean => target.has(terminal) && target.get(terminal) !== terminal;
	const to = (terminal: string) => ({ part, terminal: target.get(terminal)! });

	const lugs = Object.entries(diagram.conductors).flatMap(([conductor, ends]) =>
		(['from', 'to'] as const)
			.filter((end) => ends[end].part === part && moves(ends[end].terminal))
			.map((end) => reconnectConductor({ conductor, end, on: to(ends[end].terminal) }))
	);
	const blocks = Object.entries(diagram.mounts)
		.filter(([, host]) => host.part === part && moves(host.terminal))
		.map(([block, host]) => mountBlock({ block, on: to(host.terminal) }));
	const stacks = slots.flatMap(({ terminal }) => {
		const drawn = diagram.stacks[studKey({ part, terminal })];
		return drawn && moves(terminal) ? [reorderStack({ stud: studKey(to(terminal)), stack: drawn })] : [];
	});
	const params = permuted(diagram, part, slots, order);
	return [...(params ? [setParams({ parts: [part], params })] : []), ...lugs, ...blocks, ...stacks];
}

/** Lists with an entry for each position, in the new order; null where none changes. */
function permuted(diagram: Diagram, part: PartId, slots: Bar['slots'], order: readonly number[]): Record<string, Param> | null {
	const { definition, params } = describe(diagram.parts[part]!);
	const fused = [...slots.keys()].filter((slot) => slots[slot]!.fused);
	if (!definition || fused.length === 0) return null;
	const changed = Object.entries(definition.params.shape).flatMap(([name, schema]) => {
		const value = params[name];
		const count = fieldMeta(schema).countedBy;
		if (!Array.isArray(value) || count === undefined || params[count] !== fused.length) return [];
		const filler = typeof value[0] === 'string' ? '' : null;
		const list = fused.map((slot) => (value as Param[])[fused.indexOf(order[slot]!)] ?? filler);
		return JSON.stringify(list) === JSON.stringify(fused.map((_, index) => (value as Param[])[index] ?? filler))
			? []
			: [[name, list as Param] as const];
	});
	return changed.length > 0 ? Object.fromEntries(changed) : null;
}
