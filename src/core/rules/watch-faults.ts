/** Short-circuit currents as rules see them: what is read is noted node by node, because an edit moves few of them. */
import type { Condition, Faults } from '#core/faults';
import type { Ledger } from '#core/memory';
import type { NodeIndex } from '#core/network';
import type { Study } from './study.ts';

/** @param isOver true when the ledger has gone on to another study */
export function watchedFaults(base: Study, ledger: Ledger<Study, Study>, isOver: () => boolean): Faults {
	const { faults } = base;
	const noteAll = (): void => {
		if (!isOver()) ledger.ask(allFaults);
	};
	return {
		returnOf: (node) => (isOver() ? faults.returnOf(node) : ledger.askAbout(returnOf, node)),
		short(node, condition) {
			if (isOver()) return faults.short(node, condition);
			const figures = ledger.askAlikeAbout(SHORT[condition], node);
			if (!figures) return null;
			return {
				...figures,
				branchA(branch) {
					if (isOver()) return faults.short(node, condition)!.branchA(branch);
					return ledger.askAbout(THROUGH[condition], node * MANY + branch.index);
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
		atRestA: (branch, condition) => (isOver() ? faults.atRestA(branch, condition) : ledger.askAbout(AT_REST[condition], branch.index)),
		throughDevice: (branch) => (isOver() ? faults.throughDevice(branch) : ledger.askAlikeAbout(throughDevice, branch.index))
	};
}

const allFaults = (study: Study): Faults => study.faults;
const returnOf = (study: Study, node: NodeIndex) => study.faults.returnOf(node);
const throughDevice = (study: Study, index: number) => study.faults.throughDevice(study.network.branches[index]!);

const figuresOf = (condition: Condition) => (study: Study, node: NodeIndex) => {
	const short = study.faults.short(node, condition);
	return short && { at: short.at, to: short.to, currentA: short.currentA, openV: short.openV, loopOhm: short.loopOhm };
};

/** Node and branch in one key. */
const MANY = 2 ** 24;
const amperesThrough = (condition: Condition) => (study: Study, key: number) => {
	const branch = study.network.branches[key % MANY]!;
	return study.faults.short(Math.floor(key / MANY), condition)?.branchA(branch) ?? 0;
};
const atRestThrough = (condition: Condition) => (study: Study, index: number) =>
	study.faults.atRestA(study.network.branches[index]!, condition);

const SHORT = { greatest: figuresOf('greatest'), least: figuresOf('least') };
const THROUGH = { greatest: amperesThrough('greatest'), least: amperesThrough('least') };
const AT_REST = { greatest: atRestThrough('greatest'), least: atRestThrough('least') };
