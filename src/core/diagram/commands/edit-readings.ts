import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { copyOf } from '../copy.ts';
import { has } from '../ids.ts';
import { count, firstReason, missingCase, missingPart } from '../names.ts';
import { Id, TakenReadingSchema } from '../schema.ts';
import { sameTerminal } from '../stud-key.ts';

/** Sets readings of a meter, by id; null takes one out. */
export const editReadings = defineCommand({
	name: 'edit-readings',

	args: z.strictObject({ readings: z.record(Id, TakenReadingSchema.nullable()) }),

	label: ({ readings }) => `edit ${count(Object.keys(readings).length, 'reading')}`,

	refuse: (diagram, { readings }) =>
		firstReason(
			Object.entries(readings).map(([id, reading]) => {
				if (reading === null) return has(diagram.readings, id) ? null : 'This reading is not there any more.';
				const { at, to } = reading;
				return (
					missingCase(diagram, reading.case) ??
					missingPart(diagram, at.part) ??
					missingPart(diagram, to.part) ??
					(sameTerminal(at, to) ? 'Both leads are on the same stud, where every meter reads 0 V. Move one of them.' : null)
				);
			})
		),

	apply(draft, { readings }) {
		for (const [id, reading] of Object.entries(readings)) {
			if (reading === null) delete draft.readings[id];
			else draft.readings[id] = copyOf(reading);
		}
	}
});
