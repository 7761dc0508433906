/**
 * What is read of a study is written down while it is read (`Ledger`), so that nothing has to be declared: what a rule
 * said, and what was worked out for it, stands for as long as all that it read is the same.
 */
import { Ledger, type Memory } from '#core/memory';
import { formOf, ofSameForm, type Network } from '#core/network';
import type { Diagram } from '#core/diagram';
import type { Study } from './study.ts';
import { watchedFaults } from './watch-faults.ts';

export type StudyLedger = Ledger<Study, Study>;

const LEDGER = Symbol('ledger');
const ledgers = new WeakMap<Study, StudyLedger>();

/** The one in which a watched study is written down; for any other study that of its memory. */
export function ledgerOf(study: Study, memory: Memory = study.memory): StudyLedger {
	const own = ledgers.get(study);
	if (own) return own;
	const ledger = memory.keep(LEDGER, [], (): StudyLedger => new Ledger((base) => watched(base, ledger)));
	ledger.enter(study);
	return ledger;
}

/**
 * What several rules need: worked out once for a study, and used for the next one as well while all that it read is
 * the same. Who asks for it has read it, not what it is made of.
 */
export const derived =
	<Value>(work: (study: Study) => Value): ((study: Study) => Value) =>
	(study) =>
		ledgerOf(study).derive(work);

/**
 * The same about each of many things, by a key that outlives edits: an id, a stud's key, a node. The value is plain data,
 * without maps and functions: one that says the same is taken for the one before.
 */
export const derivedOf =
	<Key extends string | number, Value>(work: (study: Study, key: Key) => Value): ((study: Study, key: Key) => Value) =>
	(study, key) =>
		ledgerOf(study).deriveAbout(work, key);

/**
 * What there is to say about each of many things, in their order: most have nothing. After an edit only those are
 * looked at again about which something has changed.
 */
export const gathered =
	<Thing extends object, Said>(
		things: (study: Study) => readonly Thing[],
		say: (study: Study, thing: Thing) => readonly Said[]
	): ((study: Study) => readonly Said[]) =>
	(study) =>
		ledgerOf(study).gather(things, say);

/**
 * What follows from the form of the network alone: what joins what, which way, through which parts. Worked out once for
 * each form and not watched, so it must not look at resistances, currents, sizes, lengths or names.
 */
export function ofForm<Value>(work: (study: Study) => Value): (study: Study) => Value {
	const made = new WeakMap<object, { readonly value: Value }>();
	return (study) => {
		const form = formOf(study.form);
		let known = made.get(form);
		if (!known) made.set(form, (known = { value: work(ledgers.get(study)?.subject ?? study) }));
		return known.value;
	};
}

/** A study that answers as the given one does, and notes what it was asked. */
function watched(base: Study, ledger: StudyLedger): Study {
	// Whoever comes back to it when the ledger has gone on to another state gets the same answers, which nobody notes.
	const isOver = (): boolean => ledger.subject !== base;
	const asks =
		<Answer>(question: (study: Study) => Answer) =>
		(): Answer =>
			isOver() ? question(base) : ledger.ask(question);
	const asksAbout =
		<About extends string | number, Answer>(question: (study: Study, about: About) => Answer) =>
		(about: About): Answer =>
			isOver() ? question(base, about) : ledger.askAbout(question, about);

	const { memory } = base;
	const [allParts, wholeForm] = [asks(QUESTIONS.parts), asks(form)];
	const about = {
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
		letThroughBound(id: string) {
			wholeForm();
			return base.letThroughBound(id);
		},
		conductor: asksAbout(conductor),
		conductorName: asksAbout(nameOfConductor),
		stack: asksAbout(stack),
		branchCurrent: asksAbout(branchCurrent),
		continuousA: asksAbout(continuousA),
		loadA: asksAbout(loadA),
		branch: asksAbout(branch)
	};
	const study = { memory, ...about };
	for (const name of FACETS) define(study, name, asks(QUESTIONS[name]));
	let network: Network | null = null;
	define(study, 'network', () => {
		wholeForm();
		return (network ??= watchedNetwork(base.network, asks(branches)));
	});
	define(study, 'form', () => {
		wholeForm();
		return base.form;
	});
	const diagram = watchedDiagram(base.diagram, asks);
	define(study, 'diagram', () => diagram);
	let faults: Study['faults'] | null = null;
	define(study, 'faults', () => (faults ??= watchedFaults(base, ledger, isOver)));
	ledgers.set(study as unknown as Study, ledger);
	return study as unknown as Study;
}

type Asks = <Answer>(question: (study: Study) => Answer) => () => Answer;

const define = (object: object, name: string, get: () => unknown): void =>
	void Object.defineProperty(object, name, { get, enumerable: true });

const FACETS = ['profile', 'nets', 'cases', 'atRest', 'parts', 'conductors', 'stacks'] as const satisfies readonly (keyof Study)[];
const QUESTIONS = Object.fromEntries(FACETS.map((name) => [name, (study: Study) => study[name]])) as Record<
	(typeof FACETS)[number],
	(study: Study) => unknown
>;

const conductor = (study: Study, id: string) => study.conductor(id);
const nameOfConductor = (study: Study, id: string) => study.conductorName(id);
const stack = (study: Study, key: string) => study.stack(key);
const branchCurrent = (study: Study, index: number) => study.branchCurrent(index);
const continuousA = (study: Study, index: number) => study.continuousA(index);
const loadA = (study: Study, index: number) => study.loadA(index);
const branch = (study: Study, index: number) => study.branch(index);

/** Networks of one form differ in their branches' resistances and in nothing else. */
function watchedNetwork(network: Network, readBranches: () => unknown): Network {
	const watched = { ...network };
	define(watched, 'branches', () => {
		readBranches();
		return network.branches;
	});
	return ofSameForm(watched, network);
}
const form = (study: Study): unknown => formOf(study.network);
const branches = (study: Study) => study.network.branches;

const diagramQuestions = new Map<string, (study: Study) => unknown>();
function watchedDiagram(diagram: Diagram, asks: Asks): Diagram {
	const watched = {};
	for (const key of Object.keys(diagram)) {
		let question = diagramQuestions.get(key);
		if (!question) diagramQuestions.set(key, (question = (study) => study.diagram[key as keyof Diagram]));
		define(watched, key, asks(question));
	}
	return watched as Diagram;
}
