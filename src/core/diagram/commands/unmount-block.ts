import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { lockedParts, missingPart, partName } from '../names.ts';
import { Id, PointSchema } from '../schema.ts';
import { sameItem, takeOff } from '../stack.ts';
import { studKey } from '../stud-key.ts';

/** Takes a fuse block off the stud it sits on and sets it down somewhere. */
export const unmountBlock = defineCommand({
	name: 'unmount-block',

	args: z.strictObject({ block: Id, at: PointSchema }),

	label: () => 'take a fuse block off its stud',

	refuse: (diagram, { block }) =>
		missingPart(diagram, block) ??
		lockedParts(diagram, [block]) ??
		(has(diagram.mounts, block) ? null : `${partName(diagram, block)} is not on another part's stud.`),

	apply(draft, { block, at }) {
		const plate = { kind: 'block', block } as const;
		takeOff(draft, (item) => sameItem(item, plate), studKey(draft.mounts[block]!));
		delete draft.mounts[block];
		draft.parts[block]!.at = { ...at };
	}
});
