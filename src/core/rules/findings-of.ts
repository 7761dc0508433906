/** Reports of one rule → findings: sentences made, keys given. What a rule said is kept while all that it read is the same. */
import { isAlike, isSame, type Memory } from '#core/memory';
import type { AnyReport, Rule } from './define.ts';
import type { Finding } from './finding.ts';
import { numbersOf } from './numbers.ts';
import type { Study } from './study.ts';
import { ledgerOf, type StudyLedger } from './watch.ts';

/** @param memory of earlier states: the rule is asked again only about what has changed for it */
export const findingsOf = (rule: Rule, study: Study, memory: Memory): readonly Finding[] => {
	const ledger = ledgerOf(study, memory);
	const { said } = memory.keep(rule, [], () => sayingOf(rule));
	return said(ledger);
};

/** What a rule says, as the ledger keeps it. */
function sayingOf(rule: Rule): { readonly said: (ledger: StudyLedger) => readonly Finding[] } {
	let before: readonly Finding[] = [];
	const { each } = rule;
	const whole = (study: Study): readonly Finding[] => findingsFrom(rule, rule.check(study), study);
	const things = (study: Study): readonly object[] => each!.list(study);
	const about = (study: Study, thing: object): readonly Finding[] => findingsFrom(rule, each!.check(thing, study), study);
	return {
		said(ledger) {
			const now = each ? ledger.gather(things, about) : ledger.derive(whole);
			return now === before ? before : (before = asBefore(before, now));
		}
	};
}

/** What says the same as before is the same finding, so that whoever shows it need not look at it again. */
function asBefore(before: readonly Finding[], now: readonly Finding[]): readonly Finding[] {
	const byKey = new Map(before.map((finding) => [finding.key, finding]));
	const shared = now.map((finding) => {
		const known = byKey.get(finding.key);
		return known && isAlike(known, finding) ? known : finding;
	});
	return isSame(before, shared) ? before : shared;
}

function findingsFrom(rule: Rule, reports: Iterable<unknown>, study: Study): readonly Finding[] {
	let found: Finding[] | null = null;
	for (const report of reports as Iterable<AnyReport>) (found ??= []).push(findingOf(rule, report, study));
	return found ?? NONE;
}

const NONE: readonly Finding[] = [];

function findingOf({ meta, messages }: Rule, report: AnyReport, { profile }: Study): Finding {
	const words = messages[report.message](report.data) as { message: string; remedy: string };
	return {
		key: `${meta.id}:${report.at.map(({ id }) => id).join(',')}`,
		rule: meta.id,
		title: meta.title,
		severity: report.severity ?? meta.severity,
		subjects: report.at,
		message: words.message,
		remedy: words.remedy,
		why: meta.why,
		source: report.source ?? meta.source[profile.basedOn] ?? meta.source.default,
		unverified: report.unverified ?? false,
		assumptions: report.assumptions ?? [],
		caseId: report.caseId ?? null,
		numbers: numbersOf(report.data),
		waiver: null,
		waiverLapsed: false,
		lapse: null
	};
}
