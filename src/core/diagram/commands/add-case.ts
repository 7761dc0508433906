import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { firstReason, missingPart } from '../names.ts';
import { Id, OperatingCaseSchema } from '../schema.ts';

/** Adds an operating case under an id the caller chose. */
export const addCase = defineCommand({
	name: 'add-case',

	args: z.strictObject({ id: Id, case: OperatingCaseSchema }),

	label: ({ case: { label } }) => `add the case "${label}"`,

	refuse: (diagram, { id, case: { levels } }) =>
		has(diagram.cases, id)
			? `There is already an operating case "${id}". A new case needs an id of its own.`
			: firstReason(Object.keys(levels).map((part) => missingPart(diagram, part))),

	apply(draft, { id, case: added }) {
		draft.cases[id] = copyOf(added);
	}
});
