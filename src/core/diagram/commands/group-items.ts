import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { firstReason, missingArea, missingNote, missingPart } from '../names.ts';
import { Id } from '../schema.ts';

const ids = z.array(Id).default([]);

/** Makes parts, areas and notes belong together, or with null lets them be by themselves again. */
export const groupItems = defineCommand({
	name: 'group-items',

	args: z.strictObject({ parts: ids, areas: ids, notes: ids, group: Id.nullable() }),

	label: ({ group }) => (group === null ? 'take a group apart' : 'group things'),

	refuse(diagram, { parts, areas, notes, group }) {
		const number = parts.length + areas.length + notes.length;
		if (number === 0 || (group !== null && number < 2)) return 'Select two or more parts, areas or notes to group.';
		return firstReason([
			...parts.map((id) => missingPart(diagram, id)),
			...areas.map((id) => missingArea(diagram, id)),
			...notes.map((id) => missingNote(diagram, id))
		]);
	},

	apply(draft, { parts, areas, notes, group }) {
		const members = [
			...parts.map((id) => draft.parts[id]!),
			...areas.map((id) => draft.areas[id]!),
			...notes.map((id) => draft.notes[id]!)
		];
		for (const member of members) {
			if (group === null) delete member.group;
			else member.group = group;
		}
	}
});
