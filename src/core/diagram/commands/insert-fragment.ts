import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { emptyDiagram } from '../empty.ts';
import { FragmentSchema, renamed } from '../fragment.ts';
import { has } from '../ids.ts';
import { count, firstReason } from '../names.ts';
import { repair } from '../repair.ts';
import { PointSchema } from '../schema.ts';
import { terminalRef } from '../stud-key.ts';
import { edgeReason } from './limits.ts';

/**
 * Pastes a piece of a diagram, moved by an offset. Ids and labels already in use are renewed; `insertedIds` tells
 * beforehand which ids the copies get.
 */
export const insertFragment = defineCommand({
	name: 'insert-fragment',

	args: z.strictObject({ fragment: FragmentSchema, by: PointSchema.default({ x: 0, y: 0 }) }),

	label: ({ fragment }) => `paste ${count(Object.keys(fragment.parts).length, 'part')}`,

	refuse(_, { fragment, by }) {
		const { parts, conductors, mounts, stacks } = fragment;
		if (Object.keys(parts).length === 0) return 'There is nothing to paste.';
		const named = [
			...Object.values(conductors).flatMap(({ from, to }) => [from.part, to.part]),
			...Object.entries(mounts).flatMap(([block, host]) => [block, host.part]),
			...Object.keys(stacks).map((key) => terminalRef(key).part),
			...Object.values(stacks).flatMap((stack) => stack.flatMap((item) => (item.kind === 'block' ? [item.block] : [])))
		];
		const lugs = Object.values(stacks).flatMap((stack) => stack.flatMap((item) => (item.kind === 'lug' ? [item.conductor] : [])));
		const places = [...Object.values(parts).map(({ at }) => at), ...Object.values(conductors).flatMap(({ bends }) => bends ?? [])];
		return firstReason([
			...named.map((id) => (has(parts, id) ? null : `What was copied is incomplete: it names a part "${id}" that was not copied.`)),
			...lugs.map((id) =>
				has(conductors, id) ? null : `What was copied is incomplete: it names a conductor "${id}" that was not copied.`
			),
			edgeReason(places, 'There it would be', by),
			// What would be mended when the diagram is read again would cost its steps of undo then.
			...repair({ ...emptyDiagram(), ...fragment }).notes.map((note) => `What was copied is damaged. ${note}`)
		]);
	},

	apply(draft, { fragment, by }) {
		const { parts, conductors, mounts, stacks } = copyOf(renamed(draft, fragment));
		for (const [id, part] of Object.entries(parts)) draft.parts[id] = { ...part, at: { x: part.at.x + by.x, y: part.at.y + by.y } };
		for (const [id, conductor] of Object.entries(conductors)) {
			const bends = conductor.bends?.map(({ x, y }) => ({ x: x + by.x, y: y + by.y })) ?? null;
			draft.conductors[id] = { ...conductor, bends };
		}
		Object.assign(draft.mounts, mounts);
		Object.assign(draft.stacks, Object.fromEntries(Object.entries(stacks).filter(([, stack]) => stack.length > 0)));
	}
});
