import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { DiagramSchema } from '../schema.ts';

const { system, profile, colourScheme, ambient } = DiagramSchema.shape;

/** Sets what holds for the whole diagram: voltage, craft, negative, profile, colours and temperatures. */
export const editSystem = defineCommand({
	name: 'edit-system',

	args: z.strictObject({
		set: z.strictObject({ ...system.shape, profile, colourScheme, ...ambient.shape }).partial()
	}),

	label: ({ set }) => (set.nominalV === undefined ? 'change the settings' : `make it a ${set.nominalV} V system`),

	apply(draft, { set }) {
		const { profile = draft.profile, colourScheme = draft.colourScheme, outsideC, engineSpaceC, ...system } = copyOf(set);
		draft.profile = profile;
		draft.colourScheme = colourScheme;
		Object.assign(draft.system, system);
		if (outsideC !== undefined) draft.ambient.outsideC = outsideC;
		if (engineSpaceC !== undefined) draft.ambient.engineSpaceC = engineSpaceC;
	}
});
