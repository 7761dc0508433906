import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { count, firstReason, missingPart, partName } from '../names.ts';
import { Id, PartSchema } from '../schema.ts';

/**
 * Sets parameters of one or several parts of one kind. Whether the kind has such a parameter, and whether the value
 * suits it, is known to the parts library and asked there first.
 */
export const setParams = defineCommand({
	name: 'set-params',

	args: z.strictObject({ parts: z.array(Id).min(1), params: PartSchema.shape.params }),

	label: ({ parts }) => `change ${count(new Set(parts).size, 'part')}`,

	refuse(diagram, { parts }) {
		const missing = firstReason(parts.map((id) => missingPart(diagram, id)));
		if (missing !== null) return missing;
		const other = parts.find((id) => diagram.parts[id]!.kind !== diagram.parts[parts[0]!]!.kind);
		return other === undefined
			? null
			: `${partName(diagram, parts[0]!)} and ${partName(diagram, other)} are different kinds of part. Change them one after the other.`;
	},

	apply(draft, { parts, params }) {
		for (const id of parts) Object.assign(draft.parts[id]!.params, copyOf(params));
	}
});
