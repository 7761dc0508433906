/** Currents that the things on a stud bring to it, as drawn and in every case. */
import type { PartId, StackItem } from '#core/diagram';
import { isAlike } from '#core/memory';
import type { Stack, TerminalCurrents } from '#core/studs';
import type { Study, WorstCurrent } from './study.ts';
import { derived } from './watch.ts';
import { partIds } from './wiring.ts';

export interface StackCurrents extends TerminalCurrents {
	/** The largest single one. */
	readonly largest: WorstCurrent;
}

/** Worked out once for each stack, whoever asks. */
export function stackCurrents(study: Study, stack: Stack): StackCurrents {
	const known = knownCurrents(study);
	let currents = known.get(stack);
	if (!currents) known.set(stack, (currents = asBefore(stack, findCurrents(study, stack))));
	return currents;
}

const latest = new WeakMap<Stack, StackCurrents>();

/** Currents equal to those found last are the same object: what follows from them is then known as well. */
function asBefore(stack: Stack, now: StackCurrents): StackCurrents {
	const before = latest.get(stack);
	if (before && isAlike(before, now)) return before;
	latest.set(stack, now);
	return now;
}

/** Filled as it is asked for; what the currents are made of is read at once, so that it does not outlive that. */
const knownCurrents = derived(({ network, cases, parts }): WeakMap<Stack, StackCurrents> => {
	void [network.branches, cases, parts];
	return new WeakMap();
});

function findCurrents(study: Study, stack: Stack): StackCurrents {
	const layers = layersWithCurrent(stack);
	const byCase = study.cases
		.filter(({ point, operatingCase }) => point.status === 'solved' && operatingCase.duration === 'continuous')
		.map(({ id, point }) => ({ caseId: id, injectedA: layers.map((index) => injectedA(study, stack.layers[index]!.item, point.branchA)) }));

	let largest: WorstCurrent = { currentA: 0, caseId: null };
	for (const { caseId, injectedA } of byCase) {
		const currentA = Math.max(0, ...injectedA.map(Math.abs));
		if (currentA > largest.currentA) largest = { currentA, caseId };
	}
	return { layers, byCase, largest };
}

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

function injectedA(study: Study, item: StackItem, branchA: Float64Array): number {
	const { network } = study;
	if (item.kind === 'lug') {
		const index = network.branchOfConductor.get(item.conductor);
		if (index === undefined) return 0;
		// Branches run from the conductor's `from` to its `to`.
		return item.end === 'to' ? branchA[index]! : -branchA[index]!;
	}
	return item.kind === 'block' && partIds(study).has(item.block) ? -plateDrawA(study, item.block, branchA) : 0;
}

/** Amps a block's plate takes from the stud it sits on, all its fuses together. */
export function plateDrawA({ part, network }: Study, block: PartId, branchA: Float64Array): number {
	const { terminals, links } = part(block);
	const plates = new Set(terminals.filter(({ mountingPlate }) => mountingPlate).map(({ id }) => id));
	let drawA = 0;
	for (const link of links) {
		const index = network.branchOfLink.get(`${block}.${link.id}`);
		if (index === undefined || !('between' in link)) continue;
		if (plates.has(link.between[0])) drawA += branchA[index]!;
		if (plates.has(link.between[1])) drawA -= branchA[index]!;
	}
	return drawA;
}
