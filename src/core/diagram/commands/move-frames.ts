import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { count, firstReason, lockedReason, missingArea, missingNote, missingUnderlay } from '../names.ts';
import { Id, PointSchema, type Diagram } from '../schema.ts';
import { DRAWING_LIMIT_MM, insideDrawing } from './limits.ts';

const ids = z.array(Id).default([]);

/** Moves areas, notes and pictures by one offset; what lies in an area stays. */
export const moveFrames = defineCommand({
	name: 'move-frames',

	args: z.strictObject({ areas: ids, notes: ids, underlays: ids, by: PointSchema }),

	label({ areas, notes, underlays }) {
		const counts = [
			[areas, 'area'],
			[notes, 'note'],
			[underlays, 'picture']
		] as const;
		return `move ${counts.flatMap(([moved, noun]) => (moved.length > 0 ? [count(moved.length, noun)] : [])).join(' and ')}`;
	},

	refuse(diagram, { by, ...frames }) {
		const { areas, notes, underlays } = frames;
		const missing = firstReason([
			...areas.map((id) => missingArea(diagram, id)),
			...notes.map((id) => missingNote(diagram, id)),
			...underlays.map((id) => missingUnderlay(diagram, id))
		]);
		if (missing !== null) return missing;
		const moved = framesOf(diagram, frames);
		if (moved.length === 0) return 'Nothing is selected to move.';
		const held = lockedReason(moved.filter(({ locked }) => locked).map(({ name }) => name));
		if (held !== null) return held;
		return moved.every(({ at }) => insideDrawing({ x: at.x + by.x, y: at.y + by.y }))
			? null
			: `That is beyond the edge of the drawing, which reaches ${DRAWING_LIMIT_MM / 1000} m each way.`;
	},

	apply(draft, { areas, notes, underlays, by }) {
		const moved = [
			...areas.map((id) => draft.areas[id]!),
			...notes.map((id) => draft.notes[id]!),
			...underlays.map((id) => draft.underlays[id]!)
		];
		for (const { at } of new Set(moved)) {
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
	...areas.map((id) => ({ ...diagram.areas[id]!, name: diagram.areas[id]!.label || 'the area' })),
	...notes.map((id) => ({ ...diagram.notes[id]!, name: 'the note' })),
	...underlays.map((id) => ({ ...diagram.underlays[id]!, name: diagram.underlays[id]!.label || 'the picture' }))
];
