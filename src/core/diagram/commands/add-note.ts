import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { missingConductor, missingPart } from '../names.ts';
import { Id, NoteSchema, type Diagram, type Note } from '../schema.ts';

/** Writes words on the drawing under an id the caller chose. */
export const addNote = defineCommand({
	name: 'add-note',

	args: z.strictObject({ id: Id, note: NoteSchema }),

	label: ({ note }) => (note.to ? 'write a note to something' : 'write a note'),

	refuse: (diagram, { id, note }) =>
		has(diagram.notes, id) ? `There is already a note "${id}". A new note needs an id of its own.` : missingTarget(diagram, note.to),

	apply(draft, { id, note }) {
		draft.notes[id] = copyOf(note);
	}
});

/** Why a leader cannot point there, or null. */
export function missingTarget(diagram: Diagram, to: Note['to']): string | null {
	if (!to) return null;
	return to.kind === 'part' ? missingPart(diagram, to.id) : missingConductor(diagram, to.id);
}
