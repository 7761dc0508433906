import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { firstReason, missingCase, missingPart } from '../names.ts';
import { Id } from '../schema.ts';

/** Says whether a load starts in a surge case. With none named, all that are on start at once. */
export const setStarting = defineCommand({
	name: 'set-starting',

	args: z.strictObject({ case: Id, part: Id, starts: z.boolean() }),

	label: ({ starts }) => (starts ? 'let a load start in a case' : 'let a load run on in a case'),

	refuse: (diagram, args) => firstReason([missingCase(diagram, args.case), missingPart(diagram, args.part)]),

	apply(draft, args) {
		const operatingCase = draft.cases[args.case]!;
		operatingCase.starting ??= {};
		if (args.starts) operatingCase.starting[args.part] = true;
		else delete operatingCase.starting[args.part];
	}
});
