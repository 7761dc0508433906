import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { firstReason, missingArea, missingConductor, missingNote, missingPart, missingUnderlay } from '../names.ts';
import { Id } from '../schema.ts';

const ids = z.array(Id).default([]);

/** Keeps things where they are, or lets them be moved again. */
export const lockItems = defineCommand({
	name: 'lock-items',

	args: z.strictObject({ parts: ids, conductors: ids, areas: ids, notes: ids, underlays: ids, locked: z.boolean() }),

	label: ({ locked }) => (locked ? 'lock what is selected' : 'unlock what is selected'),

	refuse(diagram, { parts, conductors, areas, notes, underlays, locked }) {
		if (parts.length + conductors.length + areas.length + notes.length + underlays.length === 0)
			return `Nothing is selected to ${locked ? 'lock' : 'unlock'}.`;
		return firstReason([
			...parts.map((id) => missingPart(diagram, id)),
			...conductors.map((id) => missingConductor(diagram, id)),
			...areas.map((id) => missingArea(diagram, id)),
			...notes.map((id) => missingNote(diagram, id)),
			...underlays.map((id) => missingUnderlay(diagram, id))
		]);
	},

	apply(draft, { parts, conductors, areas, notes, underlays, locked }) {
		const things = [
			...parts.map((id) => draft.parts[id]!),
			...conductors.map((id) => draft.conductors[id]!),
			...areas.map((id) => draft.areas[id]!),
			...notes.map((id) => draft.notes[id]!),
			...underlays.map((id) => draft.underlays[id]!)
		];
		for (const thing of things) {
			if (locked) thing.locked = true;
			else delete thing.locked;
		}
	}
});
