import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { FindingKeySchema } from '../schema.ts';

/** Opens an accepted finding again. */
export const withdrawWaiver = defineCommand({
	name: 'withdraw-waiver',

	args: z.strictObject({ key: FindingKeySchema }),

	label: () => 'withdraw the acceptance of a finding',

	refuse: (diagram, { key }) => (has(diagram.waivers, key) ? null : 'This finding is not accepted, so there is nothing to withdraw.'),

	apply(draft, { key }) {
		delete draft.waivers[key];
	}
});
