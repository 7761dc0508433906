/** Words of rules about shorts. */
import { compactNumber } from '#core/units';

/** "68 ms", "5 s", "10 min", "2 h". */
export function secondsText(seconds: number): string {
	if (seconds < 1) return `${compactNumber(seconds * 1000, 2)} ms`;
	if (seconds < 120) return `${compactNumber(seconds, 2)} s`;
	return seconds < 7200 ? `${compactNumber(seconds / 60, 2)} min` : `${compactNumber(seconds / 3600, 2)} h`;
}
