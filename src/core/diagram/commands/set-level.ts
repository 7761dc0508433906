import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { firstReason, missingCase, missingPart } from '../names.ts';
import { Id, OperatingCaseSchema } from '../schema.ts';

/** Sets how far a part is on in an operating case, or with null leaves it to the case's general level. */
export const setLevel = defineCommand({
	name: 'set-level',

	args: z.strictObject({ case: Id, part: Id, level: OperatingCaseSchema.shape.levels.valueType.nullable() }),

	label: ({ level }) => (level === 0 ? 'switch a part off in a case' : 'set a level in a case'),

	refuse: (diagram, args) => firstReason([missingCase(diagram, args.case), missingPart(diagram, args.part)]),

	apply(draft, args) {
		const { levels } = draft.cases[args.case]!;
		if (args.level === null) delete levels[args.part];
		else levels[args.part] = args.level;
	}
});
