import { current } from 'immer';
import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { hostsOf } from '../mounts.ts';
import { firstReason, lockedParts, missingPart, partName } from '../names.ts';
import { Id, TerminalRefSchema } from '../schema.ts';
import { landedOn, layOn, sameItem, stackFull, takeOff } from '../stack.ts';
import { sameTerminal, studKey } from '../stud-key.ts';

/** Sets a fuse block's plate on another part's stud, on top of what is there; from another stud it moves over. */
export const mountBlock = defineCommand({
	name: 'mount-block',

	args: z.strictObject({ block: Id, on: TerminalRefSchema }),

	label: () => 'mount a fuse block on a stud',

	refuse(diagram, { block, on }) {
		const missing = firstReason([missingPart(diagram, block), missingPart(diagram, on.part), lockedParts(diagram, [block])]);
		if (missing !== null) return missing;
		if (block === on.part) return 'A fuse block cannot sit on its own stud. Choose a stud of another part.';
		if (hostsOf(diagram, on.part).includes(block))
			return `${partName(diagram, on.part)} sits on ${partName(diagram, block)}, so ${partName(diagram, block)} cannot sit on it as well.`;
		if (has(diagram.mounts, block) && sameTerminal(diagram.mounts[block]!, on)) return 'The block is on that stud already.';
		return stackFull(diagram, studKey(on));
	},

	apply(draft, { block, on }) {
		const plate = { kind: 'block', block } as const;
		if (has(draft.mounts, block)) takeOff(draft, (item) => sameItem(item, plate), studKey(draft.mounts[block]!));
		const key = studKey(on);
		if (has(draft.stacks, key)) layOn(draft, key, plate);
		else draft.stacks[key] = [...landedOn(current(draft), key), plate];
		draft.mounts[block] = { ...on };
	}
});
