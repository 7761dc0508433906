/** A piece of a diagram, as it lies on the clipboard. */
import * as z from 'zod';
import { freshGroup } from './groups.ts';
import { freshId, has } from './ids.ts';
import { relabelled } from './labels.ts';
import { conductorsAmong, placeOf, withBlocks } from './mounts.ts';
import { DiagramSchema, type Diagram, type Part, type PartId, type StackItem } from './schema.ts';
import { studKey, terminalRef } from './stud-key.ts';

export const FragmentSchema = z.strictObject({
	parts: DiagramSchema.shape.parts,
	conductors: DiagramSchema.shape.conductors,
	mounts: DiagramSchema.shape.mounts,
	stacks: DiagramSchema.shape.stacks
});

export type Fragment = z.infer<typeof FragmentSchema>;

/** These parts with the blocks on them, the conductors among them, and their order on the studs. */
export function fragmentOf(diagram: Diagram, ids: readonly PartId[]): Fragment {
	const parts = [...withBlocks(diagram, ids)].filter((id) => has(diagram.parts, id));
	const inside = new Set(parts);
	const conductors = new Set(conductorsAmong(diagram, parts));
	const goesAlong = (item: StackItem) =>
		item.kind === 'lug' ? conductors.has(item.conductor) : item.kind === 'block' ? inside.has(item.block) : true;
	return {
		parts: Object.fromEntries(parts.map((id) => [id, { ...diagram.parts[id]!, at: placeOf(diagram, id) }])),
		conductors: Object.fromEntries([...conductors].map((id) => [id, diagram.conductors[id]!])),
		mounts: Object.fromEntries(Object.entries(diagram.mounts).filter(([block, host]) => inside.has(block) && inside.has(host.part))),
		stacks: Object.fromEntries(
			Object.entries(diagram.stacks)
				.filter(([key]) => inside.has(terminalRef(key).part))
				.map(([key, stack]) => [key, stack.filter(goesAlong)])
		)
	};
}

export interface InsertedIds {
	/** Id in the fragment → id in the diagram. */
	readonly parts: ReadonlyMap<string, string>;
	readonly conductors: ReadonlyMap<string, string>;
}

/** The ids a fragment will get in this diagram; known before it is inserted, so that it can be selected after. */
export function insertedIds(diagram: Pick<Diagram, 'parts' | 'conductors'>, fragment: Fragment): InsertedIds {
	return { parts: freshIds(diagram.parts, fragment.parts), conductors: freshIds(diagram.conductors, fragment.conductors) };
}

function freshIds(record: Readonly<Record<string, unknown>>, copies: Readonly<Record<string, unknown>>): Map<string, string> {
	const taken: Record<string, unknown> = { ...record };
	const ids = new Map<string, string>();
	for (const id of Object.keys(copies)) {
		const fresh = has(taken, id) ? freshId(taken, id.replace(/\d+$/, '').slice(0, 50) || 'N') : id;
		taken[fresh] = true;
		ids.set(id, fresh);
	}
	return ids;
}

/** The fragment under its new ids and labels, ready to be laid into the diagram. */
export function renamed(diagram: Pick<Diagram, 'parts' | 'conductors' | 'areas' | 'notes'>, fragment: Fragment): Fragment {
	const ids = insertedIds(diagram, fragment);
	const labels = relabelled(
		diagram,
		[...Object.values(fragment.parts), ...Object.values(fragment.conductors)].map(({ label }) => label)
	);
	const label = (old: string) => labels.get(old) ?? old;
	const part = (old: string) => ids.parts.get(old) ?? old;
	const conductor = (old: string) => ids.conductors.get(old) ?? old;
	const end = (ref: { part: string; terminal: string }) => ({ ...ref, part: part(ref.part) });
	const item = (old: StackItem): StackItem =>
		old.kind === 'lug' ? { ...old, conductor: conductor(old.conductor) } : old.kind === 'block' ? { ...old, block: part(old.block) } : old;
	const groups = regrouped(diagram, fragment);
	return {
		parts: mapRecord(fragment.parts, part, ({ locked: _, ...value }) => ({ ...value, label: label(value.label), ...groups(value) })),
		conductors: mapRecord(fragment.conductors, conductor, (value) => ({
			...value,
			label: label(value.label),
			from: end(value.from),
			to: end(value.to)
		})),
		mounts: mapRecord(fragment.mounts, part, end),
		stacks: mapRecord(
			fragment.stacks,
			(key) => studKey(end(terminalRef(key))),
			(stack) => stack.map(item)
		)
	};
}

/** Copies of a group are a group of their own. */
function regrouped(diagram: Pick<Diagram, 'parts' | 'areas' | 'notes'>, { parts }: Fragment): (part: Part) => { group?: string } {
	const fresh = new Map<string, string>();
	for (const { group } of Object.values(parts))
		if (group !== undefined && !fresh.has(group)) fresh.set(group, freshGroup(diagram, fresh.values()));
	return ({ group }) => (group === undefined ? {} : { group: fresh.get(group)! });
}

const mapRecord = <Value>(record: Readonly<Record<string, Value>>, key: (old: string) => string, value: (old: Value) => Value) =>
	Object.fromEntries(Object.entries(record).map(([id, old]) => [key(id), value(old)]));
