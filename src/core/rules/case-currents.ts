/** Currents by branch and by load over the cases: where none has changed, the list is the one before. */
import type { Memory } from '#core/memory';
import type { Network } from '#core/network';
import type { CaseCurrent, CaseResult } from './study.ts';

type Currents = readonly (readonly CaseCurrent[])[];

/** By branch, in continuous cases that have currents. */
export const branchCurrents = ({ branches }: Network, cases: readonly CaseResult[], memory: Memory): Currents =>
	currents(
		'branch currents',
		branches.length,
		solved(cases).filter(({ operatingCase }) => operatingCase.duration === 'continuous'),
		({ point }) => point.branchA,
		memory
	);

/** By load, in all cases that have currents. */
export const loadCurrents = ({ loads }: Network, cases: readonly CaseResult[], memory: Memory): Currents =>
	currents('load currents', loads.length, solved(cases), ({ point }) => point.loadA, memory);

const solved = (cases: readonly CaseResult[]): CaseResult[] => cases.filter(({ point }) => point.status === 'solved');

function currents(
	name: string,
	count: number,
	cases: readonly CaseResult[],
	ampsIn: (result: CaseResult) => Float64Array,
	memory: Memory
): Currents {
	const before = memory.recall(name) as { readonly ids: readonly string[]; readonly list: Currents } | undefined;
	const ids = cases.map(({ id }) => id);
	const isComparable = before !== undefined && before.ids.length === ids.length && ids.every((id, i) => id === before.ids[i]);
	const amps = cases.map(ampsIn);
	const list: (readonly CaseCurrent[])[] = [];
	for (let index = 0; index < count; index++) {
		const known = isComparable ? before.list[index] : undefined;
		let isKnown = known !== undefined;
		for (let i = 0; isKnown && i < amps.length; i++) isKnown = Object.is(known![i]!.amps, amps[i]![index]);
		list.push(isKnown ? known! : ids.map((caseId, i) => ({ caseId, amps: amps[i]![index]! })));
	}
	memory.store(name, { ids, list });
	return list;
}
