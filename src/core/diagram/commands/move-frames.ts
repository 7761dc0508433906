import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { areaName, lockedReason } from '../names.ts';
import { PointSchema, type Diagram } from '../schema.ts';
import { edgeReason } from './limits.ts';
import { ids, missingAmong, severalIn, severalText } from './several.ts';

/** Moves areas, notes and pictures by one offset; what lies in an area stays. */
export const moveFrames = defineCommand({
	name: 'move-frames',

	args: z.strictObject({ areas: ids, notes: ids, underlays: ids, by: PointSchema }),

	label: ({ areas, notes, underlays }) => `move ${severalText({ areas, notes, underlays })}`,

	refuse(diagram, { by, ...frames }) {
		const missing = missingAmong(diagram, frames);
		if (missing !== null) return missing;
		const moved = framesOf(diagram, frames);
		if (moved.length === 0) return 'Nothing is selected to move.';
		return (
			lockedReason(moved.filter(({ locked }) => locked).map(({ name }) => name)) ??
			edgeReason(
				moved.map(({ at }) => at),
				'That is',
				by
			)
		);
	},

	apply(draft, { by, ...frames }) {
		for (const { at } of new Set(severalIn(draft, frames))) {
			at.x += by.x;
			at.y += by.y;
		}
	}
});

interface Frames {
	readonly areas: readonly string[];
	readonly notes: readonly string[];
	readonly underlays: readonly string[];
}

const framesOf = (diagram: Diagram, { areas, notes, underlays }: Frames) => [
	...areas.map((id) => ({ ...diagram.areas[id]!, name: areaName(diagram, id) })),
	...notes.map((id) => ({ ...diagram.notes[id]!, name: 'the note' })),
	...underlays.map((id) => ({ ...diagram.underlays[id]!, name: diagram.underlays[id]!.label || 'the picture' }))
];
