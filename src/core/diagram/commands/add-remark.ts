import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { Id, RemarkSchema } from '../schema.ts';

/** Pins a remark to a part, a conductor, a stud, a finding or the whole drawing. */
export const addRemark = defineCommand({
	name: 'add-remark',

	args: RemarkSchema.pick({ on: true, text: true, by: true, date: true }).extend({ id: Id }),

	label: () => 'add a remark',

	refuse(diagram, { id, text, by }) {
		if (has(diagram.remarks, id)) return 'There is a remark with this id already.';
		if (text.trim() === '') return 'The remark is empty; write what should be looked at.';
		return by.trim() === '' ? 'Give the name of whoever remarks it.' : null;
	},

	apply(draft, { id, on, text, by, date }) {
		draft.remarks[id] = { on: copyOf(on), text: text.trim(), by: by.trim(), date, answer: '', answeredBy: '', closed: false };
	}
});
