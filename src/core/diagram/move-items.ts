import type { Point } from '#core/geometry';
import { together, type Command } from './command.ts';
import { moveFrames } from './commands/move-frames.ts';
import { moveParts } from './commands/move-parts.ts';
import type { IdsByKind } from './item.ts';

/** What moves all these by one offset, as one step; null where there is nothing among them that moves. */
export function moveItems({ parts, areas, notes, underlays }: Omit<IdsByKind, 'conductors' | 'studs'>, by: Point): Command | null {
	return together([
		...(parts.length > 0 ? [moveParts({ parts, by })] : []),
		...(areas.length + notes.length + underlays.length > 0 ? [moveFrames({ areas, notes, underlays, by })] : [])
	]);
}
