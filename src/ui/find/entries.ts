/** Everything on a drawing that has a name, and which of it fits what was typed. */
import { gaugeText } from '#core/conductors';
import { itemKey, studKey, type Diagram, type ItemKey, type StudKey } from '#core/diagram';
import { describe } from '#core/parts';
import type { Finding } from '#core/rules';
import { conductorName, partName, studName } from '#editor';
import { findTexts as words } from './texts.ts';

export type EntryKind = 'part' | 'conductor' | 'stud' | 'area' | 'note' | 'finding';

export interface Entry {
	readonly id: string;
	readonly kind: EntryKind;
	readonly name: string;
	readonly detail: string;
	/** What a part is, beside what it is called. */
	readonly alias?: string;
	/** What is selected and brought into view; null for a finding about the whole. */
	readonly key: ItemKey | null;
	readonly finding: Finding | null;
}

/** Parts, conductors, studs, areas, notes, then findings, each in its own order. */
export function entriesOf(diagram: Diagram, findings: readonly Finding[]): Entry[] {
	const landed = landings(diagram);
	const parts = Object.entries(diagram.parts);
	const item = (kind: EntryKind, key: ItemKey, name: string, detail: string): Entry => ({
		id: key,
		kind,
		name,
		detail,
		key,
		finding: null
	});
	return [
		...parts.map(([id, part]) => {
			const { name, summary, definition } = describe(part);
			const details = [part.label.trim() === '' ? '' : name, definition ? summary : '', part.note.trim()];
			return { ...item('part', itemKey('part', id), partName(diagram, id), details.filter(Boolean).join(', ')), alias: name };
		}),
		...Object.entries(diagram.conductors).map(([id, { from, to, gauge, label }]) => {
			const way = words.between(studName(diagram, from), studName(diagram, to));
			const details = [label.trim() === '' ? '' : way, gaugeText(gauge)];
			return item('conductor', itemKey('conductor', id), conductorName(diagram, id), details.filter(Boolean).join(', '));
		}),
		...parts.flatMap(([id, part]) =>
			describe(part)
				.terminals.filter(({ mountingPlate }) => !mountingPlate)
				.map((terminal) => {
					const ref = { part: id, terminal: terminal.id };
					const on = landed.get(studKey(ref)) ?? [];
					return item(
						'stud',
						itemKey('stud', studKey(ref)),
						studName(diagram, ref),
						on.length === 0 ? words.bare : words.carries(on.join(', '))
					);
				})
		),
		...Object.entries(diagram.areas).map(([id, { label }]) => item('area', itemKey('area', id), label.trim() || id, '')),
		...Object.entries(diagram.notes).map(([id, { text }]) => item('note', itemKey('note', id), text.trim() || id, '')),
		...findings.map((finding): Entry => {
			const [first] = finding.subjects;
			const key = first && first.kind !== 'diagram' ? itemKey(first.kind, first.id) : null;
			return { id: `finding:${finding.key}`, kind: 'finding', name: finding.message, detail: finding.title, key, finding };
		})
	];
}

/** Names of the conductors on each stud. */
function landings(diagram: Diagram): ReadonlyMap<StudKey, readonly string[]> {
	const on = new Map<StudKey, string[]>();
	for (const [id, { from, to }] of Object.entries(diagram.conductors)) {
		const name = conductorName(diagram, id);
		for (const end of [from, to]) on.set(studKey(end), [...(on.get(studKey(end)) ?? []), name]);
	}
	return on;
}

/** Small letters without accents, so that "kuhlschrank" finds "Kühlschrank". */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** Sentences hold many words: things come before what is said of them. */
const AFTER_THINGS = 5;

/** Every word has to be somewhere; what is called so comes before what begins so, and that before what only mentions it. */
function rankOf({ name, detail, kind, alias = '' }: Entry, asked: string, parts: readonly string[]): number | null {
	const [called, said] = [plain(name), plain(detail)];
	if (!parts.every((part) => called.includes(part) || said.includes(part))) return null;
	if (kind === 'finding') return AFTER_THINGS;
	if (called === asked) return 0;
	if (called.startsWith(asked) || plain(alias).startsWith(asked)) return 1;
	const starts = called.split(/[^\p{L}\p{N}+−-]+/u);
	if (parts.every((part) => starts.some((start) => start.startsWith(part)))) return 2;
	return parts.every((part) => called.includes(part)) ? 3 : 4;
}

/** Best first; all of them for an empty query. */
export function findEntries(entries: readonly Entry[], query: string): readonly Entry[] {
	const asked = plain(query.trim());
	if (asked === '') return entries;
	const parts = asked.split(/\s+/);
	return entries
		.flatMap((entry) => {
			const rank = rankOf(entry, asked, parts);
			return rank === null ? [] : [{ entry, rank }];
		})
		.toSorted((a, b) => a.rank - b.rank)
		.map(({ entry }) => entry);
}
