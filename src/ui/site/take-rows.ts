/** What pasted rows do to the readings of a case. */
import { freshId, sameTerminal, type CaseId, type Diagram, type TakenReading, type TerminalRef } from '#core/diagram';
import type { PastedRow } from './paste-rows.ts';

export interface Taken {
	readonly date: string;
	readonly by: string;
}

type Readings = Diagram['readings'];

export const readingsOf = (readings: Readings, caseId: CaseId): readonly (readonly [id: string, reading: TakenReading])[] =>
	Object.entries(readings)
		.filter(([, reading]) => reading.case === caseId)
		.sort(([, a], [, b]) => a.order - b.order);

export const nextOrder = (readings: Readings): number => Math.max(0, ...Object.values(readings).map(({ order }) => order)) + 1;

/**
 * Volts alone fill blank rows in turn, from `start` on; a row with names fills the row with the same leads, or is new.
 *
 * @param black the lead of rows that name none
 * @returns the readings that change, by id, and how many rows found no place
 */
export function takeRows(
	readings: Readings,
	caseId: CaseId,
	rows: readonly PastedRow[],
	{ black, start = 0, ...taken }: Taken & { readonly black: TerminalRef; readonly start?: number }
): { readonly changes: Record<string, TakenReading>; readonly unplaced: number } {
	const mine = readingsOf(readings, caseId);
	const changes: Record<string, TakenReading> = {};
	let unplaced = 0;
	let next = start;
	let order = nextOrder(readings);
	for (const { at, to, volts } of rows) {
		if (at === null) {
			const blank = mine.slice(next).findIndex(([id, reading]) => (reading.volts === null || next === start) && !(id in changes));
			if (blank < 0) unplaced++;
			else {
				const [id, reading] = mine[next + blank]!;
				changes[id] = { ...reading, volts, ...taken };
				next += blank + 1;
			}
			continue;
		}
		const other = to ?? black;
		if (sameTerminal(at, other)) {
			unplaced++;
			continue;
		}
		const same = mine.find(([, reading]) => sameTerminal(reading.at, at) && sameTerminal(reading.to, other));
		if (same) changes[same[0]] = { ...same[1], volts, ...taken };
		else changes[freshId({ ...readings, ...changes }, 'r')] = { case: caseId, at, to: other, volts, order: order++, ...taken };
	}
	return { changes, unplaced };
}
