import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { Id, RemarkSchema } from '../schema.ts';

/**
 * Takes a reviewer's remarks in. Nothing but remarks is touched: one that is here already keeps its answer and its
 * state, since those are the author's, and takes the reviewer's words.
 */
export const importRemarks = defineCommand({
	name: 'import-remarks',

	args: z.strictObject({ remarks: z.record(Id, RemarkSchema) }),

	label: ({ remarks }) => (Object.keys(remarks).length === 1 ? 'take in a remark' : `take in ${Object.keys(remarks).length} remarks`),

	refuse: (_, { remarks }) => (Object.keys(remarks).length === 0 ? 'There is no remark in this file.' : null),

	apply(draft, { remarks }) {
		for (const [id, remark] of Object.entries(remarks)) {
			const { on, text, by, date } = copyOf(remark);
			if (has(draft.remarks, id)) Object.assign(draft.remarks[id]!, { on, text, by, date });
			else draft.remarks[id] = { on, text, by, date, answer: '', answeredBy: '', closed: false };
		}
	}
});
