/** The outline as a flat list of rows, as far as branches are open: parts, their studs, what lands on each. */
import { itemKey, studKey, type Diagram, type ItemKey, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';
import { partName, studName } from '#editor';
import { landingsOn } from '../names.ts';
import { texts } from '../texts.ts';

export interface Row {
	/** Unique in the tree; a conductor appears under both of its studs. */
	readonly id: string;
	/** What it selects. */
	readonly key: ItemKey;
	readonly level: 1 | 2 | 3;
	readonly text: string;
	readonly detail: string;
	/** Null for a leaf. */
	readonly open: boolean | null;
	/** The stud that can be connected, on stud rows. */
	readonly stud: TerminalRef | null;
	/** Place among its siblings, from 1, and their number. */
	readonly position: number;
	readonly siblings: number;
}

type Draft = Omit<Row, 'position' | 'siblings'>;

const placed = (rows: readonly Draft[]): Row[] => rows.map((row, index) => ({ ...row, position: index + 1, siblings: rows.length }));

export function outlineRows(diagram: Diagram, open: ReadonlySet<string>): Row[] {
	return placed(Object.keys(diagram.parts).map((id) => partRow(diagram, id, open))).flatMap((row) =>
		row.open ? [row, ...studRows(diagram, row, open)] : [row]
	);
}

function partRow(diagram: Diagram, id: string, open: ReadonlySet<string>): Draft {
	const part = diagram.parts[id]!;
	const { definition, name, summary, terminals } = describe(part);
	const mount = diagram.mounts[id];
	const detail = [definition && part.label.trim() ? name : '', summary, mount ? texts.outline.mountedOn(studName(diagram, mount)) : ''];
	const key = itemKey('part', id);
	return {
		id: key,
		key,
		level: 1,
		text: partName(diagram, id),
		detail: detail.filter(Boolean).join(', '),
		open: terminals.length > 0 ? open.has(key) : null,
		stud: null
	};
}

function studRows(diagram: Diagram, parent: Row, open: ReadonlySet<string>): Row[] {
	const part = parent.key.slice('part:'.length);
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
	const landed = landingsOn(diagram, parent.key.slice('stud:'.length));
	return placed(
		landed.map(({ key, name, other }): Draft => ({
			id: `${parent.id}/${key}`,
			key,
			level: 3,
			text: other ? texts.outline.toStud(name, studName(diagram, other)) : name,
			detail: '',
			open: null,
			stud: null
		}))
	);
}

/** The row a left arrow goes to. */
export const parentIndex = (rows: readonly Row[], index: number): number =>
	rows.slice(0, index).findLastIndex(({ level }) => level < rows[index]!.level);
