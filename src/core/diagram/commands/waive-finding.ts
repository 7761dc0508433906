import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { FindingKeySchema, WaiverSchema } from '../schema.ts';

/** Accepts a finding as it is, with a reason and a name. Accepting it again takes the place of the old waiver. */
export const waiveFinding = defineCommand({
	name: 'waive-finding',

	args: WaiverSchema.extend({ key: FindingKeySchema }),

	label: () => 'accept a finding',

	refuse(_, { reason, by, fingerprint }) {
		if (fingerprint.severity === 'fatal')
			return 'A fatal finding cannot be accepted: the system cannot work as drawn, and nothing after it could be checked.';
		if (reason.trim() === '') return 'Say why it is acceptable: whoever reads this later has nothing else to go by.';
		return by.trim() === '' ? 'Give the name of whoever accepts it.' : null;
	},

	apply(draft, { key, reason, by, date, fingerprint }) {
		draft.waivers[key] = { reason: reason.trim(), by: by.trim(), date, fingerprint: copyOf(fingerprint) };
	}
});
