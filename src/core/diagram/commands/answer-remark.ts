import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { Id, RemarkSchema } from '../schema.ts';

/** Answers a remark, closes it or opens it again; what is left out stays. */
export const answerRemark = defineCommand({
	name: 'answer-remark',

	args: RemarkSchema.pick({ answer: true, answeredBy: true, closed: true }).partial().extend({ id: Id }),

	label: ({ closed }) => (closed === undefined ? 'answer a remark' : closed ? 'close a remark' : 'open a remark again'),

	refuse: (diagram, { id }) => (has(diagram.remarks, id) ? null : 'This remark is not there any more.'),

	apply(draft, { id, answer, answeredBy, closed }) {
		const remark = draft.remarks[id]!;
		if (answer !== undefined) remark.answer = answer.trim();
		if (answeredBy !== undefined) remark.answeredBy = answeredBy.trim();
		if (closed !== undefined) remark.closed = closed;
	}
});
