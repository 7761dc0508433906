import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { placeOf } from '../mounts.ts';
import { takeOff } from '../stack.ts';
import { terminalRef } from '../stud-key.ts';
import { countSeveral, ids, missingAmong, severalText } from './several.ts';

/**
 * Deletes parts and conductors and everything that would hang in the air without them: conductors on a deleted
 * part, lugs and blocks on studs, what operating cases say of them, readings taken at
 * them, the leaders of notes. A block on a deleted part stays, where its host was.
 */
export const removeItems = defineCommand({
	name: 'remove-items',

	args: z.strictObject({ parts: ids, conductors: ids, areas: ids, notes: ids, underlays: ids }),

	label: (things) => `delete ${severalText(things)}`,

	refuse: (diagram, things) => (countSeveral(things) === 0 ? 'Nothing is selected to delete.' : missingAmong(diagram, things)),

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
