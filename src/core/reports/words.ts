/** Words tables share. */
import type { CaseId, Diagram } from '#core/diagram';
import { compactNumber } from '#core/units';

/** W2 before W10. Plain comparison, so that a table is the same in every language. */
export function naturally(a: string, b: string): number {
	const parts = (text: string): string[] => text.match(/\d+|\D+/g) ?? [];
	const [left, right] = [parts(a), parts(b)];
	for (let i = 0; i < Math.min(left.length, right.length); i++) {
		const [x, y] = [left[i]!, right[i]!];
		if (x === y) continue;
		const [n, m] = [Number(x), Number(y)];
		if (Number.isFinite(n) && Number.isFinite(m) && n !== m) return n - m;
		return x < y ? -1 : 1;
	}
	return left.length - right.length;
}

export const caseName = ({ cases }: Diagram, id: CaseId): string => cases[id]?.label.trim() || id;

/** "7 to 68 ms", "0.4 to 6.4 s", "1 ms or later, need not open". */
export function timeBandText(earliestS: number, latestS: number): string {
	if (earliestS === Infinity) return 'does not open';
	if (latestS === Infinity) return `${timeText(earliestS)} or later; need not open`;
	const scale = latestS < 1 ? { by: 1000, unit: 'ms' } : { by: 1, unit: 's' };
	return `${twoDigits(earliestS * scale.by)} to ${twoDigits(latestS * scale.by)} ${scale.unit}`;
}

const timeText = (s: number): string => (s < 1 ? `${twoDigits(s * 1000)} ms` : `${twoDigits(s)} s`);
const twoDigits = (value: number): string => (value >= 10 ? String(Math.round(value)) : compactNumber(value, 2));
