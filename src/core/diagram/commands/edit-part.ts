import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { missingPart } from '../names.ts';
import { Id, PartSchema } from '../schema.ts';

/** Sets a part's designation or note, or whether its fuses keep their ratings. */
export const editPart = defineCommand({
	name: 'edit-part',

	args: z.strictObject({
		part: Id,
		set: z.strictObject({ label: PartSchema.shape.label, note: PartSchema.shape.note, pinned: PartSchema.shape.pinned }).partial()
	}),

	label: ({ set }) => ('label' in set ? 'label a part' : 'pinned' in set ? 'set whether fuses keep their ratings' : 'edit a note'),

	refuse: (diagram, { part }) => missingPart(diagram, part),

	apply(draft, { part, set }) {
		Object.assign(draft.parts[part]!, copyOf(set));
	}
});
