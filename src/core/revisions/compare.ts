import type { Content } from '#core/diagram';
import type { DrawingChange, Pair } from './change.ts';
import { conductorChanges } from './conductors.ts';
import { frameChanges } from './frames.ts';
import { partChanges } from './parts.ts';
import { settingChanges } from './settings.ts';
import { studChanges } from './studs.ts';

/** All that differs between two states of a drawing, what is electrical first, in the order of parts, conductors, studs, areas and notes, settings. */
export function compareContents(before: Content, after: Content): readonly DrawingChange[] {
	const pair: Pair = { before, after };
	const changes = [...partChanges(pair), ...conductorChanges(pair), ...studChanges(pair), ...frameChanges(pair), ...settingChanges(pair)];
	const place = { electrical: 0, words: 1, moved: 2 };
	return changes.sort((a, b) => place[a.sort] - place[b.sort]);
}
