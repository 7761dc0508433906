/** Reports of one rule → findings: sentences made, keys given. What a rule said is kept while all that it read is the same. */
import { isAlike, isSame, type Memory } from '#core/memory';
import type { AnyReport, Rule } from './define.ts';
import type { Finding } from './finding.ts';
import { numbersOf } from './numbers.ts';
import type { Study } from './study.ts';
import { watch, type Reads } from './watch.ts';

export const findingsOf = (rule: Rule, study: Study, memory: Memory): readonly Finding[] =>
	rule.each ? findingsOfEach(rule, rule.each, study, memory) : findingsOfWhole(rule, study, memory);

interface KeptWhole {
	readonly findings: readonly Finding[];
	readonly reads: Reads;
}

function findingsOfWhole(rule: Rule, study: Study, memory: Memory): readonly Finding[] {
	const before = memory.recall(rule) as KeptWhole | undefined;
	if (before?.reads.hold(study)) return before.findings;
	const watched = watch(study);
	const findings = asBefore(before?.findings ?? [], findingsFrom(rule, rule.check(watched.study), watched.study));
	memory.store(rule, { findings, reads: watched.reads } satisfies KeptWhole);
	return findings;
}

interface KeptEach extends KeptWhole {
	/** Those judged so far, and what was said of them where anything was. */
	readonly things: readonly object[];
	readonly said: ReadonlyMap<object, readonly Finding[]>;
	/** Of the study apart from the things themselves, for all of them. */
	readonly reads: Reads;
}

function findingsOfEach(rule: Rule, { of, check }: NonNullable<Rule['each']>, study: Study, memory: Memory): readonly Finding[] {
	const known = memory.recall(rule) as KeptEach | undefined;
	const before = known?.reads.hold(study) ? known : null;
	const things: readonly object[] = study[of];
	if (before?.things === things) return before.findings;

	const watched = watch(study, before?.reads);
	const wasJudged = memberOf(before?.things ?? []);
	const said = new Map<object, readonly Finding[]>();
	things.forEach((thing, i) => {
		const findings = wasJudged(thing, i) ? before?.said.get(thing) : findingsFrom(rule, check(thing, watched.study), watched.study);
		if (findings && findings.length > 0) said.set(thing, findings);
	});
	const findings = asBefore(known?.findings ?? [], [...said.values()].flat());
	memory.store(rule, { things, said, findings, reads: watched.reads } satisfies KeptEach);
	return findings;
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

/** By place, which an edit seldom changes; else anywhere. */
function memberOf(things: readonly object[]): (thing: object, place: number) => boolean {
	let all: ReadonlySet<object> | null = null;
	return (thing, place) => things[place] === thing || (things.length > 0 && (all ??= new Set(things)).has(thing));
}

const findingsFrom = (rule: Rule, reports: Iterable<unknown>, study: Study): readonly Finding[] =>
	Array.from(reports as Iterable<AnyReport>, (report) => findingOf(rule, report, study));

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
