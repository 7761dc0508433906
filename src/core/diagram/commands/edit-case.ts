import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { missingCase } from '../names.ts';
import { Id, OperatingCaseSchema } from '../schema.ts';

/** Sets fields of an operating case, except the levels of single parts (`setLevel`). */
export const editCase = defineCommand({
	name: 'edit-case',

	args: z.strictObject({ case: Id, set: OperatingCaseSchema.omit({ levels: true }).partial() }),

	label: () => 'edit an operating case',

	refuse: (diagram, args) => missingCase(diagram, args.case),

	apply(draft, args) {
		Object.assign(draft.cases[args.case]!, copyOf(args.set));
	}
});
