/** Rows of readings as text: "red lead; black lead; volts", "red lead; volts", or volts alone. */
import type { TerminalRef } from '#core/diagram';

export interface PastedRow {
	/** Null: the next blank row. */
	readonly at: TerminalRef | null;
	/** Null: the usual black lead. */
	readonly to: TerminalRef | null;
	readonly volts: number;
}

/** "12,84" and "12.84 V" are numbers too. Undefined for what is none. */
export function voltsFromText(text: string): number | undefined {
	const plain = text
		.trim()
		.replace(/\s*(mV|V)$/i, '')
		.replace(',', '.')
		.replace('−', '-');
	if (plain === '' || !Number.isFinite(Number(plain))) return undefined;
	return /mV\s*$/i.test(text) ? Number(plain) / 1000 : Number(plain);
}

/** Minus signs and spaces are typed in several ways. */
export const plainName = (name: string): string => name.trim().toLowerCase().replace(/[−–]/g, '-').replace(/\s+/g, ' ');

/** Characters read of what is pasted: thousands of rows. */
const LONGEST = 200_000;

/**
 * @param studs by name as on the drawing
 * @returns rows in order, and the lines that could not be read
 */
export function pastedRows(
	text: string,
	studs: readonly { readonly ref: TerminalRef; readonly name: string }[]
): { readonly rows: readonly PastedRow[]; readonly left: readonly string[] } {
	const byName = new Map(studs.map(({ ref, name }) => [plainName(name), ref]));
	const rows: PastedRow[] = [];
	const left: string[] = [];
	for (const line of text
		.slice(0, LONGEST)
		.split(/\r?\n/)
		.filter((one) => one.trim() !== '')) {
		const cells = line.split(/[;\t]/).map((cell) => cell.trim());
		const volts = voltsFromText(cells.at(-1)!);
		const leads = cells.slice(0, -1).map((name) => byName.get(plainName(name)));
		if (volts === undefined || leads.length > 2 || leads.includes(undefined)) left.push(line.trim());
		else rows.push({ at: leads[0] ?? null, to: leads[1] ?? null, volts });
	}
	return { rows, left };
}
