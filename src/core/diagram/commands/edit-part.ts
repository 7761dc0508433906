import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { missingPart } from '../names.ts';
import { Id, PartSchema } from '../schema.ts';

/** Sets a part's designation or note. */
export const editPart = defineCommand({
	name: 'edit-part',

	args: z.strictObject({
		part: Id,
		set: z.strictObject({ label: PartSchema.shape.label, note: PartSchema.shape.note }).partial()
	}),

	label: ({ set }) => (set.label === undefined ? 'edit a note' : 'label a part'),

	refuse: (diagram, { part }) => missingPart(diagram, part),

	apply(draft, { part, set }) {
		Object.assign(draft.parts[part]!, copyOf(set));
	}
});
