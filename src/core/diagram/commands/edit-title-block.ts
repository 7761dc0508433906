import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { TitleBlockSchema } from '../schema.ts';

/** Sets fields of the title block. */
export const editTitleBlock = defineCommand({
	name: 'edit-title-block',

	args: z.strictObject({ set: TitleBlockSchema.partial() }),

	label: () => 'edit the title block',

	apply(draft, { set }) {
		Object.assign(draft.titleBlock, copyOf(set));
	}
});
