/**
 * Values printed in standards, handbooks and textbooks, each with its source, beside what the program's public
 * functions give for it. `tests/core/published/published.test.ts` compares and counts them.
 */
export interface PublishedValue {
	/** What it is, told apart from all others of its clause: "2/0 AWG, 105 °C". */
	readonly what: string;
	readonly printed: number;
	readonly ours: number;
	/** Greatest difference allowed, absolute. Rounding of the last printed digit unless the table says otherwise. */
	readonly within: number;
}

export interface PublishedTable {
	/** Document and edition. */
	readonly source: string;
	/** Clause, table or chapter. */
	readonly clause: string;
	/** Seen in one retrieved copy, or in two or more. What was not seen is no oracle and has no place here. */
	readonly seen: 'verified' | 'two-sources';
	/** "computed": a formula or the solver gives it. "looked up": it must come out of the program's tables unharmed. */
	readonly way: 'computed' | 'looked up';
	/** Why they may differ, where more than rounding is allowed. */
	readonly because?: string;
	readonly values: readonly PublishedValue[];
}

/** Table as printed: one row by line, cells by blanks, "–" where nothing is printed. */
export const rows = (text: string): (readonly string[])[] =>
	text
		.trim()
		.split('\n')
		.map((line) => line.trim().split(/\s+/));

/** Every printed cell of a table whose rows begin with their name. */
export function cells(
	text: string,
	columns: readonly string[],
	ours: (row: string, column: string) => number,
	{
		what = (row, column) => `${row}, ${column}`,
		within = () => 0
	}: { what?: (row: string, column: string) => string; within?: (printed: number, text: string) => number } = {}
): PublishedValue[] {
	return rows(text).flatMap(([row, ...printed]) => {
		if (printed.length !== columns.length) throw new Error(`Row ${row} has ${printed.length} cells for ${columns.length} columns.`);
		return columns.flatMap((column, i) => {
			const cell = printed[i]!;
			if (cell === '–') return [];
			return [{ what: what(row!, column), printed: Number(cell), ours: ours(row!, column), within: within(Number(cell), cell) }];
		});
	});
}

/** Half of the last printed digit: 1.93 → 0.005, 660 → 0.5. */
export const halfDigit = (_printed: number, text: string): number => 0.5 * 10 ** -(text.split('.')[1]?.length ?? 0);

/** A share of the printed value: `share(0.003)` allows 0.3 %. */
export const share =
	(of: number) =>
	(printed: number): number =>
		Math.abs(printed) * of;
