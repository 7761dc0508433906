import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { missingNote } from '../names.ts';
import { Id, NoteSchema } from '../schema.ts';
import { missingTarget } from './add-note.ts';

const { text, widthMm, to } = NoteSchema.shape;

/** Sets the words of a note, its width, and what its leader points at. */
export const editNote = defineCommand({
	name: 'edit-note',

	args: z.strictObject({ note: Id, set: z.strictObject({ text, widthMm, to }).partial() }),

	label: ({ set }) => ('to' in set ? (set.to ? 'lead a note to something' : 'take away the leader of a note') : 'edit a note'),

	refuse: (diagram, { note, set }) => missingNote(diagram, note) ?? missingTarget(diagram, set.to ?? null),

	apply(draft, { note, set }) {
		Object.assign(draft.notes[note]!, copyOf(set));
	}
});
