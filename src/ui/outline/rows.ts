/**
 * The outline as a flat list of rows, as far as branches are open: parts, their studs, what lands on each; areas, notes
 * and pictures; all conductors; all findings.
 */
import { gaugeText } from '#core/conductors';
import { itemKey, studKey, type Diagram, type FrameKind, type ItemKey, type TerminalRef } from '#core/diagram';
import { areaWords } from '#core/drawing';
import { describe } from '#core/parts';
import type { Finding } from '#core/rules';
import { conductorName, frameName, partName, studName } from '#editor';
import { drawingKeyTexts } from '../drawing/key-texts.ts';
import { itemName, landingsOn } from '../names.ts';
import { texts } from '../texts.ts';
import { outlineTexts as words } from './texts.ts';

export interface Row {
	/** Unique in the tree; a conductor appears under both of its studs. */
	readonly id: string;
	/** What it selects; null for a heading, and a finding about the whole. */
	readonly key: ItemKey | null;
	readonly level: 1 | 2 | 3;
	readonly text: string;
	readonly detail: string;
	/** Null for a leaf. */
	readonly open: boolean | null;
	/** The stud that can be connected, on stud rows. */
	readonly stud: TerminalRef | null;
	/** Where the conductor of this row leads, seen from the stud it stands under. */
	readonly leadsTo: TerminalRef | null;
	readonly finding: Finding | null;
	/** Place among its siblings, from 1, and their number. */
	readonly position: number;
	readonly siblings: number;
}

type Draft = Pick<Row, 'id' | 'key' | 'level' | 'text' | 'detail'> & Partial<Pick<Row, 'open' | 'stud' | 'leadsTo' | 'finding'>>;

const placed = (rows: readonly Draft[]): Row[] =>
	rows.map((row, index) => ({
		open: null,
		stud: null,
		leadsTo: null,
		finding: null,
		...row,
		position: index + 1,
		siblings: rows.length
	}));

export const ALL_CONDUCTORS = 'all-conductors';
export const ALL_FINDINGS = 'all-findings';

export function outlineRows(diagram: Diagram, findings: readonly Finding[], open: ReadonlySet<string>): Row[] {
	const parts = Object.keys(diagram.parts).map((id) => partRow(diagram, id, open));
	return placed([...parts, ...frameRows(diagram), ...headings(diagram, findings, open)]).flatMap((row) =>
		row.open ? [row, ...inside(diagram, findings, row, open)] : [row]
	);
}

/** Areas, notes and pictures below the drawing, after the parts. */
function frameRows(diagram: Diagram): Draft[] {
	const row = (kind: FrameKind, id: string, locked: boolean | undefined, ...details: readonly string[]): Draft => ({
		id: itemKey(kind, id),
		key: itemKey(kind, id),
		level: 1,
		text: frameName(diagram, kind, id),
		detail: [...details, locked ? drawingKeyTexts.lockedWord : ''].filter(Boolean).join(', '),
		open: null,
		stud: null
	});
	return [
		...Object.entries(diagram.areas).map(([id, area]) => row('area', id, area.locked, drawingKeyTexts.areaWord, areaWords(area))),
		...Object.entries(diagram.notes).map(([id, { to, locked }]) =>
			row('note', id, locked, drawingKeyTexts.noteWord, to ? itemName(diagram, itemKey(to.kind, to.id)) : '')
		),
		...Object.entries(diagram.underlays).map(([id, { locked }]) => row('underlay', id, locked, drawingKeyTexts.pictureWord))
	];
}

function headings({ conductors }: Diagram, findings: readonly Finding[], open: ReadonlySet<string>): Draft[] {
	const heading = (id: string, text: string): Draft => ({ id, key: null, level: 1, text, detail: '', open: open.has(id) });
	const count = Object.keys(conductors).length;
	return [
		...(count > 0 ? [heading(ALL_CONDUCTORS, words.conductors(count))] : []),
		...(findings.length > 0 ? [heading(ALL_FINDINGS, words.findings(findings.length))] : [])
	];
}

function inside(diagram: Diagram, findings: readonly Finding[], parent: Row, open: ReadonlySet<string>): Row[] {
	if (parent.id === ALL_CONDUCTORS) return placed(Object.keys(diagram.conductors).map((id) => conductorRow(diagram, id)));
	if (parent.id === ALL_FINDINGS) return placed(findings.map(findingRow));
	return studRows(diagram, parent, open);
}

function partRow(diagram: Diagram, id: string, open: ReadonlySet<string>): Draft {
	const part = diagram.parts[id]!;
	const { definition, name, summary, terminals } = describe(part);
	const mount = diagram.mounts[id];
	const detail = [
		definition && part.label.trim() ? name : '',
		summary,
		mount ? texts.outline.mountedOn(studName(diagram, mount)) : '',
		part.locked ? drawingKeyTexts.lockedWord : ''
	];
	const key = itemKey('part', id);
	return {
		id: key,
		key,
		level: 1,
		text: partName(diagram, id),
		detail: detail.filter(Boolean).join(', '),
		open: terminals.length > 0 ? open.has(key) : null
	};
}

function conductorRow(diagram: Diagram, id: string): Draft {
	const { from, to, gauge } = diagram.conductors[id]!;
	const detail = words.way(studName(diagram, from), studName(diagram, to), gaugeText(gauge));
	return { id: `all/${id}`, key: itemKey('conductor', id), level: 2, text: conductorName(diagram, id), detail, leadsTo: from };
}

function findingRow(finding: Finding): Draft {
	const [first] = finding.subjects;
	const key = first && first.kind !== 'diagram' ? itemKey(first.kind, first.id) : null;
	return { id: `finding/${finding.key}`, key, level: 2, text: words.severity(finding.severity), detail: finding.message, finding };
}

function studRows(diagram: Diagram, parent: Row, open: ReadonlySet<string>): Row[] {
	const part = parent.id.slice('part:'.length);
	const studs = describe(diagram.parts[part]!).terminals.filter(({ mountingPlate }) => !mountingPlate);
	const rows = studs.map((terminal): Draft => {
		const ref = { part, terminal: terminal.id };
		const key = itemKey('stud', studKey(ref));
		const landed = landingsOn(diagram, studKey(ref));
		return {
			id: key,
			key,
			level: 2,
			text: terminal.label,
			detail: landed.map(({ name }) => name).join(', '),
			open: landed.length > 0 ? open.has(key) : null,
			stud: ref
		};
	});
	return placed(rows).flatMap((row) => (row.open ? [row, ...landedRows(diagram, row)] : [row]));
}

function landedRows(diagram: Diagram, parent: Row): Row[] {
	const landed = landingsOn(diagram, parent.id.slice('stud:'.length));
	return placed(
		landed.map(({ key, name, other }): Draft => ({
			id: `${parent.id}/${key}`,
			key,
			level: 3,
			text: other ? texts.outline.toStud(name, studName(diagram, other)) : name,
			detail: '',
			leadsTo: other
		}))
	);
}

/** The row a left arrow goes to. */
export const parentIndex = (rows: readonly Row[], index: number): number =>
	rows.slice(0, index).findLastIndex(({ level }) => level < rows[index]!.level);
