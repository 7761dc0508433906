import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { missingUnderlay } from '../names.ts';
import { Id, UnderlaySchema } from '../schema.ts';

const { label, at, mmPerPx, opacity } = UnderlaySchema.shape;

/** Sets the name of a picture, its scale, and how strongly it shows. */
export const editUnderlay = defineCommand({
	name: 'edit-underlay',

	args: z.strictObject({ underlay: Id, set: z.strictObject({ label, at, mmPerPx, opacity }).partial() }),

	label: ({ set }) => ('mmPerPx' in set ? 'set the scale of a picture' : 'edit a picture'),

	refuse: (diagram, { underlay }) => missingUnderlay(diagram, underlay),

	apply(draft, { underlay, set }) {
		Object.assign(draft.underlays[underlay]!, copyOf(set));
	}
});
