/**
 * What is read of a study, written down while it is read: a result stands for as long as all of that is the same. So
 * nothing has to be declared, and what reads everything is simply worked out again.
 */
import { isSame } from '#core/memory';
import { formOf, ofSameForm, type Network } from '#core/network';
import type { Diagram } from '#core/diagram';
import type { Study } from './study.ts';

/** A question to a study; the same question is the same function. */
type Question = (study: Study) => unknown;
type QuestionOf = (study: Study, about: never) => unknown;

/** What was read. */
export class Reads {
	readonly #answers = new Map<Question, unknown>();
	readonly #about = new Map<QuestionOf, Map<unknown, unknown>>();

	/** Whether all of it is the same in another study. */
	hold(study: Study): boolean {
		for (const [question, answer] of this.#answers) if (!Object.is(question(study), answer)) return false;
		for (const [question, known] of this.#about) {
			for (const [about, answer] of known) if (!Object.is(answerOf(question, study, about), answer)) return false;
		}
		return true;
	}

	/** Takes over what others have read of the same study. */
	add(others: Reads): void {
		for (const [question, answer] of others.#answers) this.#answers.set(question, answer);
		for (const [question, known] of others.#about) {
			const own = this.about(question);
			for (const [about, answer] of known) own.set(about, answer);
		}
	}

	note(question: Question, answer: unknown): void {
		this.#answers.set(question, answer);
	}

	/** Answers to a question, by what it is about. */
	about(question: QuestionOf): Map<unknown, unknown> {
		let known = this.#about.get(question);
		if (!known) this.#about.set(question, (known = new Map()));
		return known;
	}
}

interface Watcher {
	readonly base: Study;
	readonly reads: Reads;
}

const watchers = new WeakMap<Study, Watcher>();

/**
 * A study that answers as the given one does.
 *
 * @param reads what was read before and holds for this study; more is added to it
 */
export function watch(study: Study, reads = new Reads()): { readonly study: Study; readonly reads: Reads } {
	const base = watchers.get(study)?.base ?? study;
	const asks: Asks = (question) => {
		// A study gives one answer: asking once is enough.
		let asked: { readonly answer: ReturnType<typeof question> } | null = null;
		return () => {
			if (!asked) {
				asked = { answer: question(base) };
				reads.note(question, asked.answer);
			}
			return asked.answer;
		};
	};
	const asksAbout: AsksAbout = (question) => {
		let known: Map<unknown, unknown> | null = null;
		return (about) => {
			known ??= reads.about(question);
			let answer = known.get(about) as ReturnType<typeof question> | undefined;
			if (answer === undefined) known.set(about, (answer = question(base, about)));
			return answer;
		};
	};
	const watched = watchedStudy(base, asks, asksAbout);
	watchers.set(watched, { base, reads });
	return { study: watched, reads };
}

const GONE = Symbol('gone');

/** What is asked about may not be there any more. */
function answerOf(question: QuestionOf, study: Study, about: unknown): unknown {
	try {
		return question(study, about as never);
	} catch {
		return GONE;
	}
}

/**
 * What several rules need: worked out once for a study, and used for the next one as well while all that it read is
 * the same. Who asks for it has read it, not what it is made of.
 */
export function derived<Value>(work: (study: Study) => Value): (study: Study) => Value {
	interface Kept {
		/** The last one it is known to hold for. */
		study: Study;
		readonly value: Value;
		readonly reads: Reads;
	}
	const of = (base: Study): Value => {
		const before = base.memory.recall(of) as Kept | undefined;
		if (before && (before.study === base || before.reads.hold(base))) {
			before.study = base;
			return before.value;
		}
		const { study, reads } = watch(base);
		const value = sameList(before?.value, work(study));
		base.memory.store(of, { study: base, value, reads } satisfies Kept);
		return value;
	};
	return (study) => {
		const watcher = watchers.get(study);
		const value = of(watcher?.base ?? study);
		watcher?.reads.note(of, value);
		return value;
	};
}

/** The same for each of many things, by the thing itself; it is not noted as read, but what it is made of is. */
export function derivedOf<Thing extends object, Value>(work: (study: Study, thing: Thing) => Value): (study: Study, thing: Thing) => Value {
	interface Kept {
		readonly value: Value;
		readonly reads: Reads;
	}
	const known = Symbol('known');
	return (study, thing) => {
		const base = watchers.get(study)?.base ?? study;
		const kept = base.memory.keep(known, [], () => new WeakMap<Thing, Kept>());
		let of = kept.get(thing);
		if (!of?.reads.hold(base)) {
			const watched = watch(base);
			kept.set(thing, (of = { value: work(watched.study, thing), reads: watched.reads }));
		}
		watchers.get(study)?.reads.add(of.reads);
		return of.value;
	};
}

/** The list before, if it has the same members. */
const sameList = <Value>(before: Value | undefined, now: Value): Value =>
	Array.isArray(before) && Array.isArray(now) && isSame(before, now) ? before : now;

/**
 * What follows from the form of the network alone: what joins what, which way, through which parts. Worked out once for
 * each form and not watched, so it must not look at resistances, currents, sizes, lengths or names.
 */
export function ofForm<Value>(work: (study: Study) => Value): (study: Study) => Value {
	const made = new WeakMap<object, { readonly value: Value }>();
	return (study) => {
		const form = formOf(study.network);
		let known = made.get(form);
		if (!known) made.set(form, (known = { value: work(watchers.get(study)?.base ?? study) }));
		return known.value;
	};
}

type Asks = <Answer>(question: (study: Study) => Answer) => () => Answer;
type AsksAbout = <About, Answer>(question: (study: Study, about: About) => Answer) => (about: About) => Answer;

function watchedStudy(base: Study, asks: Asks, asksAbout: AsksAbout): Study {
	const { memory } = base;
	const study = { memory, ...ABOUT(base, asks, asksAbout) };
	for (const name of FACETS) define(study, name, asks(QUESTIONS[name]));
	let network: Network | null = null;
	let diagram: Diagram | null = null;
	define(study, 'network', () => (network ??= watchedNetwork(base.network, asks)));
	define(study, 'diagram', () => (diagram ??= watchedDiagram(base.diagram, asks)));
	return study as unknown as Study;
}

const define = (object: object, name: string, get: () => unknown): void =>
	void Object.defineProperty(object, name, { get, enumerable: true });

const FACETS = [
	'profile',
	'nets',
	'cases',
	'atRest',
	'parts',
	'conductors',
	'faults',
	'stacks'
] as const satisfies readonly (keyof Study)[];
const QUESTIONS = Object.fromEntries(FACETS.map((name) => [name, (study: Study) => study[name]])) as Record<
	(typeof FACETS)[number],
	Question
>;

/** What a study answers about one thing: noted for that thing alone, or where that seldom matters for all. */
const ABOUT = (base: Study, asks: Asks, asksAbout: AsksAbout) => {
	const allParts = asks(QUESTIONS.parts);
	const wholeForm = asks(form);
	return {
		part(id: string) {
			allParts();
			return base.part(id);
		},
		studName(key: string) {
			allParts();
			return base.studName(key);
		},
		protection(id: string) {
			wholeForm();
			return base.protection(id);
		},
		conductor: asksAbout(conductor),
		conductorName: asksAbout(nameOfConductor),
		stack: asksAbout(stack),
		branchCurrent: asksAbout(branchCurrent)
	};
};
const conductor = (study: Study, id: string) => study.conductor(id);
const nameOfConductor = (study: Study, id: string) => study.conductorName(id);
const stack = (study: Study, key: string) => study.stack(key);
const branchCurrent = (study: Study, index: number) => study.branchCurrent(index);

/** Networks of one form differ in their branches' resistances and in nothing else. */
function watchedNetwork(network: Network, asks: Asks): Network {
	asks(form)();
	const watched = { ...network };
	define(watched, 'branches', asks(branches));
	return ofSameForm(watched, network);
}
const form = (study: Study): unknown => formOf(study.network);
const branches = (study: Study) => study.network.branches;

const diagramQuestions = new Map<string, Question>();
function watchedDiagram(diagram: Diagram, asks: Asks): Diagram {
	const watched = {};
	for (const key of Object.keys(diagram)) {
		let question = diagramQuestions.get(key);
		if (!question) diagramQuestions.set(key, (question = (study) => study.diagram[key as keyof Diagram]));
		define(watched, key, asks(question));
	}
	return watched as Diagram;
}
