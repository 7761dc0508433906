/** Findings that someone has accepted, and when that no longer holds. */
import type { Diagram, Fingerprint, Waiver } from '#core/diagram';
import { compactNumber } from '#core/units';
import { figureName } from './numbers.ts';
import type { Finding, Severity } from './finding.ts';

/** A number may move by this share before the acceptance lapses. */
export const LAPSES_BEYOND = 0.05;

const RANK: Record<Severity, number> = { note: 0, warning: 1, error: 2, fatal: 3 };

/** What a finding says, to be kept with its waiver. Plain data. */
export const fingerprintOf = ({ severity, subjects, numbers }: Pick<Finding, 'severity' | 'subjects' | 'numbers'>): Fingerprint => ({
	severity,
	subjects: subjects.map(({ kind, id }) => `${kind}:${id}`),
	numbers: { ...numbers }
});

/** True unless it is accepted and still says what was accepted. */
export const isOpen = ({ waiver, waiverLapsed }: Pick<Finding, 'waiver' | 'waiverLapsed'>): boolean => !waiver || waiverLapsed;

/** The findings with the diagram's waivers put to them. */
export function withWaivers(findings: readonly Finding[], waivers: Diagram['waivers']): Finding[] {
	if (Object.keys(waivers).length === 0) return [...findings];
	const moved = waiversElsewhere(findings, waivers);
	return findings.map((finding) => {
		const waiver = ownWaiver(waivers, finding.key) ?? moved(finding);
		if (!waiver) return finding;
		const { reason, by, date } = waiver;
		const change = changeSince(waiver.fingerprint, finding);
		const lapse = change === null ? null : `Accepted by ${by} on ${date}, but open again: ${change}.`;
		return { ...finding, waiver: { reason, by, date }, waiverLapsed: lapse !== null, lapse };
	});
}

/** Keys of waivers whose finding no longer exists: what was accepted has been put right, or was taken out. */
export function idleWaivers({ waivers }: Pick<Diagram, 'waivers'>, findings: readonly Pick<Finding, 'key'>[]): string[] {
	const keys = new Set(findings.map(({ key }) => key));
	return Object.keys(waivers).filter((key) => !keys.has(key));
}

const ownWaiver = (waivers: Diagram['waivers'], key: string): Waiver | undefined =>
	Object.hasOwn(waivers, key) ? waivers[key] : undefined;

/**
 * A finding's key has its subjects in it, in the diagram's order, and a file is kept in another: its waiver is then found
 * by rule and subjects; and when they change, by rule and place.
 */
function waiversElsewhere(findings: readonly Finding[], waivers: Diagram['waivers']): (finding: Finding) => Waiver | undefined {
	const keys = new Set(findings.map(({ key }) => key));
	const placeOf = (key: string, subject: string | undefined) => `${key.slice(0, key.indexOf(':'))} ${subject}`;
	const allOf = (key: string, subjects: readonly string[]) => placeOf(key, subjects.toSorted().join());
	const idle = Object.entries(waivers).filter(([key]) => !keys.has(key));
	const bySubjects = new Map(idle.map(([key, waiver]) => [allOf(key, waiver.fingerprint.subjects), waiver]));
	const byPlace = new Map(idle.map(([key, waiver]) => [placeOf(key, waiver.fingerprint.subjects[0]), waiver]));
	return (finding) => {
		const { subjects } = fingerprintOf(finding);
		return bySubjects.get(allOf(finding.key, subjects)) ?? byPlace.get(placeOf(finding.key, subjects[0]));
	};
}

/** What a finding says other than when it was accepted, in words; null when it says the same. */
function changeSince(then: Fingerprint, finding: Finding): string | null {
	const now = fingerprintOf(finding);
	if (finding.severity === 'fatal') return 'it is fatal, and a fatal finding cannot be accepted';
	if (RANK[now.severity] > RANK[then.severity]) return `it was ${article(then.severity)} and is now ${article(now.severity)}`;
	if (now.subjects.length !== then.subjects.length || now.subjects.some((subject) => !then.subjects.includes(subject)))
		return 'it is about other things than before';
	for (const name of new Set([...Object.keys(then.numbers), ...Object.keys(now.numbers)])) {
		const [before, after] = [then.numbers[name], now.numbers[name]];
		if (before === undefined || after === undefined) return 'it is made of other figures than before';
		if (Math.abs(after - before) > LAPSES_BEYOND * Math.max(Math.abs(before), 1e-9)) return movedText(name, before, after);
	}
	return null;
}

function movedText(key: string, before: number, after: number): string {
	const { name, unit } = figureName(key);
	const text = (value: number) => [compactNumber(value), unit].join(' ').trim();
	return `a figure in it (${name}) went from ${text(before)} to ${text(after)}`;
}

const article = (severity: Severity): string => (severity === 'error' ? 'an error' : severity === 'fatal' ? 'fatal' : `a ${severity}`);
