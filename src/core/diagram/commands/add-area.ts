import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { AreaSchema, Id } from '../schema.ts';

/** Draws a named place under an id the caller chose. */
export const addArea = defineCommand({
	name: 'add-area',

	args: z.strictObject({ id: Id, area: AreaSchema }),

	label: ({ area: { label } }) => (label === '' ? 'draw an area' : `draw the area ${label}`),

	refuse: (diagram, { id }) => (has(diagram.areas, id) ? `There is already an area "${id}". A new area needs an id of its own.` : null),

	apply(draft, { id, area }) {
		draft.areas[id] = copyOf(area);
	}
});
