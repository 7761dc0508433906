import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { count, firstReason, missingConductor } from '../names.ts';
import { Id } from '../schema.ts';

/** Leaves the routes of conductors to the program again; those that are locked keep theirs. */
export const reroute = defineCommand({
	name: 'reroute',

	args: z.strictObject({ conductors: z.array(Id).min(1) }),

	label: ({ conductors }) => `route ${count(new Set(conductors).size, 'conductor')} anew`,

	refuse(diagram, { conductors }) {
		const missing = firstReason(conductors.map((id) => missingConductor(diagram, id)));
		if (missing !== null) return missing;
		const bent = conductors.filter((id) => diagram.conductors[id]!.bends !== null);
		if (bent.length === 0) return 'None of these conductors has bends set by hand: their routes are the program’s already.';
		return bent.every((id) => diagram.conductors[id]!.locked)
			? 'The conductors with bends set by hand are locked. Unlock them first.'
			: null;
	},

	apply(draft, { conductors }) {
		for (const id of conductors) if (!draft.conductors[id]!.locked) draft.conductors[id]!.bends = null;
	}
});
