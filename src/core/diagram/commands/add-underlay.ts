import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { Id, UnderlaySchema } from '../schema.ts';

/** Pictures are large: more would make a file nobody can send. */
const MOST = 4;

/** Lays a picture below the drawing under an id the caller chose. */
export const addUnderlay = defineCommand({
	name: 'add-underlay',

	args: z.strictObject({ id: Id, underlay: UnderlaySchema }),

	label: () => 'lay a picture below the drawing',

	refuse(diagram, { id }) {
		if (has(diagram.underlays, id)) return `There is already a picture "${id}". A new picture needs an id of its own.`;
		return Object.keys(diagram.underlays).length >= MOST
			? `There are ${MOST} pictures below the drawing already. Delete one that is not needed any more.`
			: null;
	},

	apply(draft, { id, underlay }) {
		draft.underlays[id] = copyOf(underlay);
	}
});
