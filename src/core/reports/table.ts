/** Tables as data: what PDF, CSV and screen show of them is made from the same cells. */
import type { Primitive } from '#core/graphics';
import type { Box } from '#core/geometry';

/** A number is in the unit of its column; null where there is nothing to say. Infinity is kept. */
export type Cell = string | number | null;

export interface Column<Id extends string = string> {
	readonly id: Id;
	readonly title: string;
	/** Of its numbers: "A", "mm". Left out: text, or a bare number. */
	readonly unit?: string;
	/** Text to the left, numbers to the right. */
	readonly kind: 'text' | 'number';
	/** Decimals of its numbers; left out: `digits` significant digits. */
	readonly decimals?: number;
	/** Left out: 3. */
	readonly digits?: number;
	/** Share of the table's width it would like, against the others' 1. */
	readonly weight?: number;
	/** Left empty, to be filled in by hand. */
	readonly byHand?: boolean;
}

/** A drawing that goes with a row. */
export interface Figure {
	readonly caption: string;
	readonly box: Box;
	readonly primitives: readonly Primitive[];
	/** Size of its text in its own units: what it has to be enlarged by to be read follows from it. */
	readonly textMm: number;
}

export interface Row<Id extends string = string> {
	readonly cells: Readonly<Record<Id, Cell>>;
	/** Rows of one group follow one another under its name. */
	readonly group?: string;
	readonly figure?: Figure;
}

export interface Table<Id extends string = string> {
	readonly id: string;
	readonly title: string;
	/** How to read it; a sentence or two. */
	readonly lead?: string;
	readonly columns: readonly Column<Id>[];
	readonly rows: readonly Row<Id>[];
	/** Shown where there are no rows. */
	readonly whenEmpty: string;
	/** Sources and assumptions, below the table. */
	readonly notes: readonly string[];
}

/** Gives a table its types: every row has a cell for every column. */
export const table = <const Id extends string>(made: Table<Id>): Table<Id> => made;

export const textColumn = <const Id extends string>(id: Id, title: string, weight = 1): Column<Id> => ({ id, title, kind: 'text', weight });

export const numberColumn = <const Id extends string>(
	id: Id,
	title: string,
	unit: string,
	{ weight = 1, ...precision }: { readonly decimals?: number; readonly digits?: number; readonly weight?: number } = {}
): Column<Id> => ({ id, title, kind: 'number', weight, ...(unit === '' ? {} : { unit }), ...precision });

export const handColumn = <const Id extends string>(id: Id, title: string, weight = 1): Column<Id> => ({
	id,
	title,
	kind: 'text',
	weight,
	byHand: true
});
