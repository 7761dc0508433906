import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { newConductor } from '../empty.ts';
import { has } from '../ids.ts';
import { firstReason, missingPart } from '../names.ts';
import { ConductorSchema, Id, type Diagram, type TerminalRef } from '../schema.ts';
import { layOn, stackFull } from '../stack.ts';
import { sameTerminal, studKey } from '../stud-key.ts';

const { from, to, ...fields } = ConductorSchema.shape;

/** Draws a conductor from stud to stud under an id the caller chose; fields not given are those of a new conductor. */
export const addConductor = defineCommand({
	name: 'add-conductor',

	args: z.strictObject({ id: Id, conductor: z.strictObject({ ...z.strictObject(fields).partial().shape, from, to }) }),

	label: ({ conductor }) => (conductor.label ? `draw conductor ${conductor.label}` : 'draw a conductor'),

	refuse: (diagram, { id, conductor }) =>
		has(diagram.conductors, id)
			? `There is already a conductor "${id}". A new conductor needs an id of its own.`
			: refuseEnds(diagram, conductor.from, conductor.to),

	apply(draft, { id, conductor }) {
		draft.conductors[id] = copyOf({ ...newConductor(conductor.from, conductor.to), ...copyOf(conductor) });
		layOn(draft, studKey(conductor.from), { kind: 'lug', conductor: id, end: 'from' });
		layOn(draft, studKey(conductor.to), { kind: 'lug', conductor: id, end: 'to' });
	}
});

/** Why a conductor cannot run between these two studs, or null. */
export const refuseEnds = (diagram: Diagram, a: TerminalRef, b: TerminalRef): string | null =>
	firstReason([
		missingPart(diagram, a.part),
		missingPart(diagram, b.part),
		sameTerminal(a, b) ? 'A conductor needs two different studs: both ends are on the same one. Choose another stud for one end.' : null,
		stackFull(diagram, studKey(a)),
		stackFull(diagram, studKey(b))
	]);
