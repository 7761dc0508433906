import { itemKey, type Content, type ItemKey } from '#core/diagram';
import { composeScene, type ChangeMarks, type ChangeSign } from '#core/drawing';
import { asDiagram } from './as-diagram.ts';
import type { DrawingChange } from './change.ts';

/** The strongest sign wins where one thing has several changes. */
const STRENGTH: Readonly<Record<ChangeSign, number>> = { moved: 0, changed: 1, removed: 2, added: 3 };

/** What of the changes shows on the drawing, and how what is gone looked. */
export function drawnChanges(before: Content, changes: readonly DrawingChange[]): ChangeMarks {
	const signs = new Map<ItemKey, ChangeSign>();
	const movedParts = new Set<ItemKey>();
	for (const { sort, how, subject } of changes) {
		if (subject.kind === 'diagram') continue;
		const key = itemKey(subject.kind, subject.id);
		const sign: ChangeSign = how !== 'changed' ? how : sort === 'moved' ? 'moved' : 'changed';
		if (sort === 'moved' && subject.kind === 'part') movedParts.add(key);
		const known = signs.get(key);
		if (known === undefined || STRENGTH[sign] > STRENGTH[known]) signs.set(key, sign);
	}
	const marks: Record<ItemKey, Exclude<ChangeSign, 'removed'>> = {};
	for (const [key, sign] of signs) if (sign !== 'removed') marks[key] = sign;
	const removed = [...signs].filter(([, sign]) => sign === 'removed').map(([key]) => key);
	if (removed.length === 0 && movedParts.size === 0) return { marks, ghosts: [] };
	const { items } = composeScene(asDiagram(before));
	const ghosts = (keys: Iterable<ItemKey>, sign: 'removed' | 'moved') =>
		[...keys].flatMap((key) => {
			const item = items.get(key);
			return item ? [{ item, sign }] : [];
		});
	return { marks, ghosts: [...ghosts(removed, 'removed'), ...ghosts(movedParts, 'moved')] };
}
