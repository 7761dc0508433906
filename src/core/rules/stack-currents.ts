/** Currents that the things on a stud bring to it, as drawn and in every case. */
import type { CaseId, PartId, StackItem, StudKey } from '#core/diagram';
import type { Stack, TerminalCurrents } from '#core/studs';
import { greatest } from './extremes.ts';
import type { Study, WorstCurrent } from './study.ts';
import { derived, derivedOf } from './watch.ts';
import { partIds } from './wiring.ts';

export interface StackCurrents extends TerminalCurrents {
	/** The largest single one. */
	readonly largest: WorstCurrent;
}

/** Worked out once for each stack, whoever asks. */
export const stackCurrents = (study: Study, stack: Stack): StackCurrents =>
	study.stack(stack.key) === stack ? currentsAt(study, stack.key) : findCurrents(study, stack);

const currentsAt = derivedOf((study, key: StudKey): StackCurrents => findCurrents(study, study.stack(key)!));

function findCurrents(study: Study, stack: Stack): StackCurrents {
	const layers = layersWithCurrent(stack);
	const brought = layers.map((index) => broughtTo(study, stack.layers[index]!.item));
	const byCase = continuousCaseIds(study).map((caseId, i) => ({ caseId, injectedA: brought.map((amps) => amps(i)) }));

	const worst = byCase.map(({ caseId, injectedA }) => ({ caseId, currentA: Math.max(0, ...injectedA.map(Math.abs)) }));
	return { layers, byCase, largest: greatest([{ currentA: 0, caseId: null }, ...worst], ({ currentA }) => currentA)! };
}

/** Continuous cases that have currents, in their order. */
export const continuousCaseIds = derived((study): readonly CaseId[] =>
	study.cases.flatMap(({ id, point, operatingCase }) => (point.status === 'solved' && operatingCase.duration === 'continuous' ? [id] : []))
);

const withCurrent = new WeakMap<Stack, readonly number[]>();

/** Places of lugs and blocks. */
function layersWithCurrent(stack: Stack): readonly number[] {
	let layers = withCurrent.get(stack);
	if (!layers) {
		layers = stack.layers.flatMap(({ item }, index) => (item.kind === 'lug' || item.kind === 'block' ? [index] : []));
		withCurrent.set(stack, layers);
	}
	return layers;
}

/** Amps that a lug or a block brings to its stud, by continuous case. */
function broughtTo(study: Study, item: StackItem): (caseIndex: number) => number {
	const { form } = study;
	if (item.kind === 'lug') {
		const index = form.branchOfConductor.get(item.conductor);
		if (index === undefined) return () => 0;
		const current = study.continuousA(index);
		// Branches run from the conductor's `from` to its `to`.
		return item.end === 'to' ? (i) => current[i]!.amps : (i) => -current[i]!.amps;
	}
	if (item.kind !== 'block' || !partIds(study).has(item.block)) return () => 0;
	const draw = plateDrawA(study, item.block);
	return (i) => -draw(i);
}

/** Amps a block's plate takes from the stud it sits on, all its fuses together, by continuous case. */
export function plateDrawA(study: Study, block: PartId): (caseIndex: number) => number {
	const { terminals, links } = study.part(block);
	const plates = new Set(terminals.filter(({ mountingPlate }) => mountingPlate).map(({ id }) => id));
	const flows = links.flatMap((link) => {
		const index = study.form.branchOfLink.get(`${block}.${link.id}`);
		if (index === undefined || !('between' in link)) return [];
		const sense = (plates.has(link.between[0]) ? 1 : 0) - (plates.has(link.between[1]) ? 1 : 0);
		return sense === 0 ? [] : [{ sense, current: study.continuousA(index) }];
	});
	return (i) => flows.reduce((sum, { sense, current }) => sum + sense * current[i]!.amps, 0);
}
