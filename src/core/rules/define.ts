/**
 * A rule is one file: what it requires, where that comes from, why it matters, what it says, how it decides.
 * A rule never asks about another rule.
 */
import type { CaseId } from '#core/diagram';
import type { ProfileId } from '#core/profiles';
import type { Severity, Subject } from './finding.ts';
import type { Study } from './study.ts';

export interface RuleMeta {
	/** The file's name. */
	readonly id: string;
	/** The requirement, never the fault: "A conductor carries no more than its amperage". */
	readonly title: string;
	/** Severity unless a report says otherwise. */
	readonly severity: Severity;
	readonly group: 'topology' | 'protection' | 'conductors' | 'studs' | 'batteries' | 'documents';
	readonly why: string;
	/** By profile, or for all: clause, table or "common practice, no source". */
	readonly source: Partial<Record<ProfileId, string>> & { readonly default: string };
}

type MessageFunction = (data: never) => { readonly message: string; readonly remedy: string };

interface Placed {
	/** The first is where the finding is marked. */
	readonly at: readonly [Subject, ...Subject[]];
	readonly severity?: Severity;
	/** Table or clause used for this report, where it differs from the rule's. */
	readonly source?: string;
	readonly unverified?: boolean;
	readonly assumptions?: readonly string[];
	readonly caseId?: CaseId | null;
}

export type Report<Messages extends Record<string, MessageFunction>> = {
	[Id in keyof Messages]: Placed & { readonly message: Id; readonly data: Parameters<Messages[Id]>[0] };
}[keyof Messages];

/** A report of some rule, its data already known to fit its message. */
export type AnyReport = Placed & { readonly message: string; readonly data: never };

// A list of rules forgets what each one's messages take; only the rule itself puts data and message together.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export interface Rule<Messages extends Record<string, MessageFunction> = any> {
	readonly meta: RuleMeta;
	/** Typed functions of the data: what is wrong with the numbers put in, and what to do. */
	readonly messages: Messages;
	/** Reports in the diagram's order, so that lists and snapshots are stable. */
	check(study: Study): Iterable<Report<Messages>>;
	/** Given where things are judged one by one; without it a rule is about the whole. */
	readonly each?: Each<Messages>;
}

/** Lists whose members a rule may judge one by one. */
const LISTS = {
	conductors: ({ conductors }: Study) => conductors,
	parts: ({ parts }: Study) => parts,
	stacks: ({ stacks }: Study) => stacks,
	loads: ({ form }: Study) => form.loads
};

type ListName = keyof typeof LISTS;
/** One of them, or another one that is kept: `derived` or `ofForm`. */
type List = ListName | ((study: Study) => readonly object[]);
type MemberOf<Of extends List> = ReturnType<
	Of extends ListName ? (typeof LISTS)[Of] : Of extends (study: Study) => readonly object[] ? Of : never
>[number];

interface Each<Messages extends Record<string, MessageFunction>> {
	list(study: Study): readonly object[];
	check(thing: object, study: Study): Iterable<Report<Messages>>;
}

/** Gives a rule its types: a report's `data` must fit the message it names. */
export const defineRule = <Messages extends Record<string, MessageFunction>>(rule: Rule<Messages>): Rule<Messages> => rule;

/**
 * The same for a rule that judges conductors, parts, stacks or loads one by one: after an edit it is asked only about those
 * that look different now, or of which something has changed that it read about them.
 */
export function defineRuleForEach<Of extends List, Messages extends Record<string, MessageFunction>>(
	of: Of,
	{ meta, messages, checkOne }: RuleForEach<Of, Messages>
): Rule<Messages> {
	const list: (study: Study) => readonly object[] = typeof of === 'function' ? of : LISTS[of as ListName];
	return {
		meta,
		messages,
		*check(study) {
			for (const thing of list(study)) yield* checkOne(thing as MemberOf<Of>, study);
		},
		each: { list, check: (thing, study) => checkOne(thing as MemberOf<Of>, study) }
	};
}

interface RuleForEach<Of extends List, Messages extends Record<string, MessageFunction>> {
	readonly meta: RuleMeta;
	readonly messages: Messages;
	readonly checkOne: (thing: MemberOf<Of>, study: Study) => Iterable<Report<Messages>>;
}
