import type { Diagram } from '#core/diagram';
import type { Finding } from '#core/rules';

/** Whoever accepted something last accepts the next thing too, as a rule. Kept while the page is open. */
export const acceptedBy = { last: '' };

/** Where the user is, as "2026-03-01". */
export function today(now = new Date()): string {
	return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

/** Under which key a finding's waiver is kept: its own, or that of the same rule at the same place before its subjects changed. */
export function waiverKey({ waivers }: Pick<Diagram, 'waivers'>, { key, rule, subjects }: Finding): string | null {
	if (Object.hasOwn(waivers, key)) return key;
	const [first] = subjects;
	const place = first && `${first.kind}:${first.id}`;
	const former = Object.entries(waivers).find(
		([other, { fingerprint }]) => other.startsWith(`${rule}:`) && fingerprint.subjects[0] === place
	);
	return former?.[0] ?? null;
}
