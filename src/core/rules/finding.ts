import type { CaseId, StudKey, Waiver } from '#core/diagram';

export type Severity = 'fatal' | 'error' | 'warning' | 'note';

/** What a finding is about. The first subject is where the mark is drawn and where a click goes. */
export type Subject =
	| { readonly kind: 'part'; readonly id: string }
	| { readonly kind: 'conductor'; readonly id: string }
	| { readonly kind: 'stud'; readonly id: StudKey }
	| { readonly kind: 'diagram'; readonly id: '' };

/** Plain data: it crosses from the worker, goes into files and lists, and is compared in tests. */
export interface Finding {
	/** Stable while rule and subjects stay the same: "undersized-conductor:C3". */
	readonly key: string;
	readonly rule: string;
	/** What the rule requires, for example "A conductor carries no more than its amperage". */
	readonly title: string;
	readonly severity: Severity;
	readonly subjects: readonly Subject[];
	/** What is wrong, with the numbers put in. */
	readonly message: string;
	/** What to do about it. */
	readonly remedy: string;
	/** Why it matters. */
	readonly why: string;
	/** The clause or table relied on, or "common practice, no source". */
	readonly source: string;
	/** True when a number behind it was not seen in a source. */
	readonly unverified: boolean;
	/** Values assumed because the diagram does not give them. */
	readonly assumptions: readonly string[];
	/** The operating case in which it is worst, if it depends on one. */
	readonly caseId: CaseId | null;
	/** The figures the message is made of, by name: "currentA", "limits.percent". */
	readonly numbers: Readonly<Record<string, number>>;
	/** Who accepted it and why; null where nobody has. */
	readonly waiver: Acceptance | null;
	/** True when it was accepted, but is open again because what it says has changed since. */
	readonly waiverLapsed: boolean;
	/** What has changed, in words; null unless lapsed. */
	readonly lapse: string | null;
}

export type Acceptance = Pick<Waiver, 'reason' | 'by' | 'date'>;
