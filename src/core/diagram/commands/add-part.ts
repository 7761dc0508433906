import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { Id, PartSchema } from '../schema.ts';

/** Places a part under an id the caller chose (`freshId`), so that it can be selected at once. */
export const addPart = defineCommand({
	name: 'add-part',

	args: z.strictObject({
		id: Id,
		part: z.strictObject({
			...PartSchema.shape,
			label: PartSchema.shape.label.default(''),
			rotation: PartSchema.shape.rotation.default(0),
			params: PartSchema.shape.params.default({}),
			note: PartSchema.shape.note.default('')
		})
	}),

	label: ({ part }) => (part.label === '' ? `place a ${part.kind}` : `place ${part.label}`),

	refuse: (diagram, { id }) => (has(diagram.parts, id) ? `There is already a part "${id}". A new part needs an id of its own.` : null),

	apply(draft, { id, part }) {
		draft.parts[id] = copyOf(part);
	}
});
