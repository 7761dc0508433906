import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { firstReason, missingConductor, missingPart } from '../names.ts';
import { Id, TerminalRefSchema } from '../schema.ts';
import { layOn, sameItem, stackFull, takeOff } from '../stack.ts';
import { sameTerminal, studKey } from '../stud-key.ts';

/** Lands one end of a conductor on another stud. Bends set by hand led to the old stud, so the route is free again. */
export const reconnectConductor = defineCommand({
	name: 'reconnect-conductor',

	args: z.strictObject({ conductor: Id, end: z.enum(['from', 'to']), on: TerminalRefSchema }),

	label: () => 'move a conductor to another stud',

	refuse(diagram, { conductor: id, end, on }) {
		const missing = firstReason([missingConductor(diagram, id), missingPart(diagram, on.part)]);
		if (missing !== null) return missing;
		const { [end]: current, [end === 'from' ? 'to' : 'from']: other } = diagram.conductors[id]!;
		if (sameTerminal(current, on)) return 'This end is on that stud already.';
		if (sameTerminal(other, on)) return 'The other end of this conductor is on that stud. A conductor needs two different studs.';
		return stackFull(diagram, studKey(on));
	},

	apply(draft, { conductor: id, end, on }) {
		const conductor = draft.conductors[id]!;
		const lug = { kind: 'lug', conductor: id, end } as const;
		takeOff(draft, (item) => sameItem(item, lug), studKey(conductor[end]));
		conductor[end] = { ...on };
		conductor.bends = null;
		layOn(draft, studKey(on), lug);
	}
});
