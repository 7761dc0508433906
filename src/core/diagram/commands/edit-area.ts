import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { missingArea } from '../names.ts';
import { AreaSchema, Id } from '../schema.ts';

const { label, spaces, ambientC } = AreaSchema.shape;

/** Sets an area's name and what it is like there. */
export const editArea = defineCommand({
	name: 'edit-area',

	args: z.strictObject({ area: Id, set: z.strictObject({ label, spaces, ambientC }).partial() }),

	label: ({ set }) => ('label' in set ? 'label an area' : 'set what an area is like'),

	refuse: (diagram, { area }) => missingArea(diagram, area),

	apply(draft, { area, set }) {
		Object.assign(draft.areas[area]!, copyOf(set));
	}
});
