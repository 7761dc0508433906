import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { Id } from '../schema.ts';
import { countSeveral, ids, missingAmong, severalIn } from './several.ts';

/** Makes parts, areas and notes belong together, or with null lets them be by themselves again. */
export const groupItems = defineCommand({
	name: 'group-items',

	args: z.strictObject({ parts: ids, areas: ids, notes: ids, group: Id.nullable() }),

	label: ({ group }) => (group === null ? 'take a group apart' : 'group things'),

	refuse(diagram, { group, ...members }) {
		const number = countSeveral(members);
		if (number === 0 || (group !== null && number < 2)) return 'Select two or more parts, areas or notes to group.';
		return missingAmong(diagram, members);
	},

	apply(draft, { group, ...members }) {
		for (const member of severalIn(draft, members)) {
			if (group === null) delete member.group;
			else member.group = group;
		}
	}
});
