import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { count, firstReason, missingConductor } from '../names.ts';
import { ConductorSchema, Id } from '../schema.ts';

const { from: _from, to: _to, bends: _bends, ...fields } = ConductorSchema.shape;

/** Sets any fields of one or several conductors, except where they land and how they are routed. */
export const editConductors = defineCommand({
	name: 'edit-conductors',

	args: z.strictObject({ conductors: z.array(Id).min(1), set: z.strictObject(fields).partial() }),

	label: ({ conductors }) => `edit ${count(new Set(conductors).size, 'conductor')}`,

	refuse: (diagram, { conductors }) => firstReason(conductors.map((id) => missingConductor(diagram, id))),

	apply(draft, { conductors, set }) {
		for (const id of conductors) Object.assign(draft.conductors[id]!, copyOf(set));
	}
});
