import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { conductorName, lockedReason, missingConductor } from '../names.ts';
import { ConductorSchema, Id } from '../schema.ts';

/** Fixes the route of a conductor by hand, or with null leaves it to the program again. */
export const setBends = defineCommand({
	name: 'set-bends',

	args: z.strictObject({ conductor: Id, bends: ConductorSchema.shape.bends }),

	label: ({ bends }) => (bends === null ? 'route a conductor automatically' : 'route a conductor by hand'),

	refuse: (diagram, { conductor }) =>
		missingConductor(diagram, conductor) ?? lockedReason(diagram.conductors[conductor]!.locked ? [conductorName(diagram, conductor)] : []),

	apply(draft, { conductor, bends }) {
		draft.conductors[conductor]!.bends = copyOf(bends);
	}
});
