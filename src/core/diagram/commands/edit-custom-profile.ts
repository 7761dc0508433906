import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { CustomProfileSchema } from '../schema.ts';

const { base, numbers } = CustomProfileSchema.shape;

/**
 * Changes numbers of the rule profile for this diagram alone, which is then checked against its custom profile. A new
 * one is made from `base`, or from the profile in use. A number of null gives the base's own back.
 */
export const editCustomProfile = defineCommand({
	name: 'edit-custom-profile',

	args: z.strictObject({
		base: base.optional(),
		numbers: z.record(numbers.keyType, numbers.valueType.nullable())
	}),

	label: ({ base, numbers }) => {
		const count = Object.keys(numbers).length;
		if (base !== undefined && count === 0) return 'base the custom profile on another one';
		return count === 1 ? 'change a number of the profile' : `change ${count} numbers of the profile`;
	},

	refuse: (_, { base }) => (base === 'custom' ? 'A custom profile is made from a published one, not from itself.' : null),

	apply(draft, { base, numbers }) {
		draft.customProfile ??= { base: draft.profile === 'custom' ? 'common-practice' : draft.profile, numbers: {} };
		if (base !== undefined) draft.customProfile.base = base;
		for (const [key, value] of Object.entries(numbers)) {
			if (value === null) delete draft.customProfile.numbers[key];
			else draft.customProfile.numbers[key] = value;
		}
		draft.profile = 'custom';
	}
});
