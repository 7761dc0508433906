import type { Finding } from '#core/rules';
import { voiceTexts as words } from './voice-texts.ts';

/** More than two at once are counted: a voice that reads for a minute is switched off. */
const READ_OUT = 2;

/** What is new and what is gone, in sentences; null when nothing changed. */
export function changeWords(before: ReadonlySet<string>, now: readonly Finding[]): string | null {
	const fresh = now.filter(({ key }) => !before.has(key));
	const kept = now.length - fresh.length;
	const gone = before.size - kept;
	if (fresh.length === 0 && gone === 0) return null;
	return [
		...fresh.slice(0, READ_OUT).map(({ severity, message }) => words.one(severity, message)),
		...(fresh.length > READ_OUT ? [words.more(fresh.length - READ_OUT)] : []),
		...(gone > 0 ? [words.gone(gone)] : []),
		...(now.length === 0 ? [words.none] : [])
	].join(' ');
}
