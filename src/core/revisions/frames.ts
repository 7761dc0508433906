import type { Area, Content } from '#core/diagram';
import { areaWords } from '#core/drawing';
import { ids, same, type ChangeSort, type DrawingChange, type Pair } from './change.ts';
import { conductorText, partText } from './names.ts';

const SUBJECT = { kind: 'diagram', id: '' } as const;

/** What differs in areas, which say what is around things, and in notes. */
export const frameChanges = (pair: Pair): readonly DrawingChange[] => [...areaChanges(pair), ...noteChanges(pair)];

function areaChanges({ before, after }: Pair): DrawingChange[] {
	return ids(before.areas, after.areas).flatMap((id): DrawingChange[] => {
		const [old, now] = [before.areas[id], after.areas[id]];
		const name = `Area “${(old ?? now)!.label}”`;
		const change = (sort: ChangeSort, text: string, how: DrawingChange['how'] = 'changed'): DrawingChange => ({
			sort,
			how,
			subject: SUBJECT,
			name,
			text
		});
		if (!old) return [change('electrical', `added: ${likeThere(now!)}`, 'added')];
		if (!now) return [change('electrical', `removed: ${likeThere(old)}`, 'removed')];
		return [
			...(old.label === now.label ? [] : [change('words', `is called ${now.label.trim() || 'nothing'} now`)]),
			...(likeThere(old) === likeThere(now) ? [] : [change('electrical', `${likeThere(old)} to ${likeThere(now)}`)]),
			...(same(placeOf(old), placeOf(now)) ? [] : [change('moved', 'has other edges on the drawing')])
		];
	});
}

const likeThere = (area: Area): string => areaWords(area) || 'an ordinary place';
const placeOf = ({ at, widthMm, heightMm }: Area) => [at.x, at.y, widthMm, heightMm];

function noteChanges({ before, after }: Pair): DrawingChange[] {
	return ids(before.notes, after.notes).flatMap((id): DrawingChange[] => {
		const [old, now] = [before.notes[id], after.notes[id]];
		const change = (text: string, how: DrawingChange['how'] = 'changed'): DrawingChange => ({
			sort: 'words',
			how,
			subject: SUBJECT,
			name: 'Note',
			text
		});
		if (!old) return [change(`added${about(after, now!.to)}: ${now!.text}`, 'added')];
		if (!now) return [change(`removed${about(before, old.to)}: ${old.text}`, 'removed')];
		return [
			...(old.text === now.text ? [] : [change(`“${old.text}” to “${now.text}”`)]),
			...(same(old.to, now.to) ? [] : [change(now.to ? `leads${about(after, now.to)} now` : 'leads to nothing now')]),
			...(same([old.at, old.widthMm], [now.at, now.widthMm]) ? [] : [{ ...change('moved on the drawing'), sort: 'moved' as const }])
		];
	});
}

function about(content: Content, to: Content['notes'][string]['to']): string {
	if (!to) return '';
	return ` to ${to.kind === 'part' ? partText(content, to.id) : conductorText(content, to.id)}`;
}
