import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { conductorName, partName, missingPart } from '../names.ts';
import { StackItemSchema, StudKeySchema, type Diagram, type StackItem } from '../schema.ts';
import { landedOn, sameItem, STACK_LIMIT } from '../stack.ts';
import { terminalRef } from '../stud-key.ts';

/** Sets what sits on a stud from the seat upward; an empty list leaves the order to the program. */
export const reorderStack = defineCommand({
	name: 'reorder-stack',

	args: z.strictObject({ stud: StudKeySchema, stack: z.array(StackItemSchema).max(STACK_LIMIT) }),

	label: () => 'change the order on a stud',

	refuse(diagram, { stud, stack }) {
		const missing = missingPart(diagram, terminalRef(stud).part);
		if (missing !== null) return missing;
		const landed = landedOn(diagram, stud);
		for (const [index, item] of stack.entries()) {
			if (item.kind === 'washer' || item.kind === 'lock-washer' || item.kind === 'nut') continue;
			if (stack.findIndex((other) => sameItem(other, item)) < index) return `${itemName(diagram, item)} is in the list twice.`;
			if (item.kind !== 'fuse' && !landed.some((other) => sameItem(other, item)))
				return `${itemName(diagram, item)} does not land on this stud. Connect it here first.`;
		}
		const left = stack.length === 0 ? undefined : landed.find((item) => !stack.some((other) => sameItem(other, item)));
		return left === undefined ? null : `${itemName(diagram, left)} lands on this stud too and needs its place in the order.`;
	},

	apply(draft, { stud, stack }) {
		if (stack.length > 0) draft.stacks[stud] = copyOf(stack);
		else delete draft.stacks[stud];
	}
});

function itemName(diagram: Diagram, item: StackItem): string {
	if (item.kind === 'lug') return `The lug of ${conductorName(diagram, item.conductor)}`;
	return item.kind === 'block' ? `The plate of ${partName(diagram, item.block)}` : 'The fuse';
}
