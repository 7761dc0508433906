import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { Id } from '../schema.ts';

/** Takes a remark out. */
export const removeRemark = defineCommand({
	name: 'remove-remark',

	args: z.strictObject({ id: Id }),

	label: () => 'remove a remark',

	refuse: (diagram, { id }) => (has(diagram.remarks, id) ? null : 'This remark is not there any more.'),

	apply(draft, { id }) {
		delete draft.remarks[id];
	}
});
