import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { areaName, lockedReason, missingArea } from '../names.ts';
import { AreaSchema, Id } from '../schema.ts';

const { at, widthMm, heightMm } = AreaSchema.shape;

/** Sets where an area is and how large. */
export const placeArea = defineCommand({
	name: 'place-area',

	args: z.strictObject({ area: Id, at, widthMm, heightMm }),

	label: () => 'change the size of an area',

	refuse: (diagram, { area }) => missingArea(diagram, area) ?? lockedReason(diagram.areas[area]!.locked ? [areaName(diagram, area)] : []),

	apply(draft, { area, ...place }) {
		Object.assign(draft.areas[area]!, { ...place, at: { ...place.at } });
	}
});
