/**
 * Short-circuit currents as rules see them. What is worked out about a node is kept for as long as nothing that its
 * short depends on has changed: an edit moves few of them.
 */
import type { Condition, DeviceFault, Faults } from '#core/faults';
import type { Ledger } from '#core/memory';
import type { NodeIndex, Wire } from '#core/network';
import type { Study } from './study.ts';

/** @param isOver true when the ledger has gone on to another study */
export function watchedFaults(base: Study, ledger: Ledger<Study, Study>, isOver: () => boolean): Faults {
	const { faults } = base;
	const noteAll = (): void => {
		if (!isOver()) ledger.ask(allFaults);
	};
	const watched: Faults = {
		returnOf: (node) => (isOver() ? faults.returnOf(node) : ledger.askAbout(returnOf, node)),
		version: (node, condition) => (isOver() ? faults.version(node, condition) : ledger.askAbout(VERSION[condition], node)),
		short(node, condition) {
			if (isOver()) return faults.short(node, condition);
			const figures = ledger.deriveAbout(SHORT[condition], node);
			if (!figures) return null;
			return {
				...figures,
				branchA(branch) {
					if (isOver()) return faults.short(node, condition)!.branchA(branch);
					return ledger.deriveAbout(THROUGH[condition], `${node} ${nameOf(base.form.branches[branch.index]!)}`);
				},
				voltsLeft(positive, negative) {
					noteAll();
					return faults.short(node, condition)!.voltsLeft(positive, negative);
				}
			};
		},
		shortTo(node, to, condition) {
			noteAll();
			return faults.shortTo(node, to, condition);
		},
		atRestA: (branch, condition) => (isOver() ? faults.atRestA(branch, condition) : ledger.deriveAbout(AT_REST[condition], branch.index)),
		throughDevice: (branch) => (isOver() ? faults.throughDevice(branch) : ledger.deriveAbout(throughDevice, branch.index))
	};
	unwatched.set(watched, faults);
	return watched;
}

const unwatched = new WeakMap<Faults, Faults>();

const allFaults = (study: Study): Faults => study.faults;
const returnOf = (study: Study, node: NodeIndex) => study.faults.returnOf(node);
const versionIn = (condition: Condition) => (study: Study, node: NodeIndex) => study.faults.version(node, condition);

/** Reads that nodes and return are as they were, and answers from the faults themselves. */
function answersAt(study: Study, nodes: readonly (NodeIndex | null)[], condition: Condition): Faults {
	for (const node of nodes) if (node !== null) study.faults.version(node, condition);
	return unwatched.get(study.faults)!;
}

const figuresOf = (condition: Condition) => (study: Study, node: NodeIndex) => {
	const short = answersAt(study, [node, study.faults.returnOf(node)], condition).short(node, condition);
	return short && { at: short.at, to: short.to, currentA: short.currentA, openV: short.openV, loopOhm: short.loopOhm };
};

/** Conductors have other numbers when one before them goes; they keep their ids. */
const nameOf = ({ origin }: Wire): string =>
	origin.kind === 'conductor' ? `conductor ${origin.id}` : `link ${origin.part}.${origin.link}`;

/** @param key node and name of the branch */
const amperesThrough =
	(condition: Condition) =>
	(study: Study, key: string): number => {
		const [, number, kind, name] = /^(\d+) (conductor|link) (.*)$/s.exec(key)!;
		const node = Number(number);
		const { branches, branchOfConductor, branchOfLink } = study.form;
		const branch = branches[(kind === 'conductor' ? branchOfConductor : branchOfLink).get(name!)!]!;
		const faults = answersAt(study, [node, study.faults.returnOf(node), branch.a, branch.b], condition);
		return faults.short(node, condition)?.branchA(branch) ?? 0;
	};

const atRestThrough =
	(condition: Condition) =>
	(study: Study, index: number): number => {
		const branch = study.form.branches[index]!;
		return answersAt(study, [branch.a, branch.b], condition).atRestA(branch, condition);
	};

function throughDevice(study: Study, index: number): DeviceFault {
	const branch = study.form.branches[index]!;
	const { a, b } = branch;
	return answersAt(study, [a, b, study.faults.returnOf(b) ?? study.faults.returnOf(a)], 'greatest').throughDevice(branch);
}

const VERSION = { greatest: versionIn('greatest'), least: versionIn('least') };
const SHORT = { greatest: figuresOf('greatest'), least: figuresOf('least') };
const THROUGH = { greatest: amperesThrough('greatest'), least: amperesThrough('least') };
const AT_REST = { greatest: atRestThrough('greatest'), least: atRestThrough('least') };
