import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { missingCase } from '../names.ts';
import { Id } from '../schema.ts';

/** Deletes an operating case with the readings taken in it. The last one stays: without any, no current could be worked out. */
export const removeCase = defineCommand({
	name: 'remove-case',

	args: z.strictObject({ case: Id }),

	label: () => 'delete an operating case',

	refuse: (diagram, args) =>
		missingCase(diagram, args.case) ??
		(Object.keys(diagram.cases).length === 1
			? 'This is the last operating case, and currents are worked out for at least one. Add another case first.'
			: null),

	apply(draft, args) {
		for (const [id, reading] of Object.entries(draft.readings)) if (reading.case === args.case) delete draft.readings[id];
		delete draft.cases[args.case];
	}
});
