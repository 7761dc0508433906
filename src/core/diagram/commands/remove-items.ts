import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { placeOf } from '../mounts.ts';
import { count, firstReason, missingArea, missingConductor, missingNote, missingPart, missingUnderlay } from '../names.ts';
import { Id } from '../schema.ts';
import { takeOff } from '../stack.ts';
import { terminalRef } from '../stud-key.ts';

/**
 * Deletes parts and conductors and everything that would hang in the air without them: conductors on a deleted
 * part, lugs and blocks on studs, what operating cases say of them, readings taken at
 * them, the leaders of notes. A block on a deleted part stays, where its host was.
 */
export const removeItems = defineCommand({
	name: 'remove-items',

	args: z.strictObject({
		parts: z.array(Id).default([]),
		conductors: z.array(Id).default([]),
		areas: z.array(Id).default([]),
		notes: z.array(Id).default([]),
		underlays: z.array(Id).default([])
	}),

	label({ parts, conductors, areas, notes, underlays }) {
		const counts = [
			[parts, 'part'],
			[conductors, 'conductor'],
			[areas, 'area'],
			[notes, 'note'],
			[underlays, 'picture']
		] as const;
		return `delete ${counts.flatMap(([ids, noun]) => (ids.length > 0 ? [count(ids.length, noun)] : [])).join(' and ')}`;
	},

	refuse(diagram, { parts, conductors, areas, notes, underlays }) {
		if (parts.length + conductors.length + areas.length + notes.length + underlays.length === 0) return 'Nothing is selected to delete.';
		return firstReason([
			...parts.map((id) => missingPart(diagram, id)),
			...conductors.map((id) => missingConductor(diagram, id)),
			...areas.map((id) => missingArea(diagram, id)),
			...notes.map((id) => missingNote(diagram, id)),
			...underlays.map((id) => missingUnderlay(diagram, id))
		]);
	},

	apply(draft, { parts, conductors, areas, notes, underlays }) {
		const gone = new Set(parts);
		const cut = new Set(conductors);
		for (const [id, { from, to }] of Object.entries(draft.conductors)) if (gone.has(from.part) || gone.has(to.part)) cut.add(id);

		for (const [block, host] of Object.entries(draft.mounts)) {
			if (gone.has(host.part) && !gone.has(block)) draft.parts[block]!.at = { ...placeOf(draft, block) };
		}
		for (const [block, host] of Object.entries(draft.mounts)) if (gone.has(block) || gone.has(host.part)) delete draft.mounts[block];

		takeOff(draft, (item) => (item.kind === 'lug' && cut.has(item.conductor)) || (item.kind === 'block' && gone.has(item.block)));
		for (const key of Object.keys(draft.stacks)) if (gone.has(terminalRef(key).part)) delete draft.stacks[key];
		for (const { levels, starting = {} } of Object.values(draft.cases)) {
			for (const id of gone) {
				if (has(levels, id)) delete levels[id];
				if (has(starting, id)) delete starting[id];
			}
		}
		for (const [id, { at, to }] of Object.entries(draft.readings)) if (gone.has(at.part) || gone.has(to.part)) delete draft.readings[id];
		for (const note of Object.values(draft.notes)) if (note.to && (note.to.kind === 'part' ? gone : cut).has(note.to.id)) note.to = null;
		for (const id of areas) delete draft.areas[id];
		for (const id of notes) delete draft.notes[id];
		for (const id of underlays) delete draft.underlays[id];
		for (const id of cut) delete draft.conductors[id];
		for (const id of gone) delete draft.parts[id];
	}
});
