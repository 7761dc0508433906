import { current } from 'immer';
import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { contentOf, revisionsInOrder } from '../revisions.ts';
import { Id, RevisionSchema, type Diagram } from '../schema.ts';

/** Issues the diagram as it stands: it is kept whole, and the title block names the revision and its date. */
export const issueRevision = defineCommand({
	name: 'issue-revision',

	args: RevisionSchema.omit({ content: true, order: true }).extend({ id: Id, why: z.string().max(2000) }),

	label: ({ letter }) => `issue revision ${letter}`,

	refuse(diagram, { id, letter, by, why }) {
		if (has(diagram.revisions, id)) return 'There is a revision with this id already.';
		if (revisionsInOrder(diagram).some((revision) => revision.letter === letter))
			return `Revision ${letter} has been issued already; take the next letter.`;
		if (by.trim() === '') return 'Give the name of whoever issues it.';
		return why.trim() === '' ? 'Say what changed and why: whoever holds the old sheet needs it.' : null;
	},

	apply(draft, { id, letter, date, by, why }) {
		draft.titleBlock.revisionIndex = letter;
		draft.titleBlock.dateOfIssue = date;
		const order = Math.max(0, ...Object.values(draft.revisions).map((revision) => revision.order)) + 1;
		draft.revisions[id] = { letter, order, date, by: by.trim(), why: why.trim(), content: contentOf(current(draft) as Diagram) };
	}
});
