/** Works out a study; what costs something is done on first use and kept, as far as it still holds for the next one. */
import { terminalRef, type Diagram, type OperatingCase, type PartId, type StudKey } from '#core/diagram';
import { faultsOf, type Faults } from '#core/faults';
import { createMemory, type Memory } from '#core/memory';
import { buildNetwork, formOf, type Network } from '#core/network';
import { describe } from '#core/parts';
import { profileOf } from '#core/profiles';
import { letThroughBound, protectionOf } from '#core/protection';
import { solveCase } from '#core/solver';
import { stackPlaces, stacksOf } from '#core/studs';
import { settled } from '#core/units';
import { branchCurrents, loadCurrents } from './case-currents.ts';
import { netsOf } from './nets.ts';
import { keptPoint } from './same-point.ts';
import type { CaseResult, PartView, Study, WorstCurrent } from './study.ts';
import { viewConductors, type Worst } from './view-conductors.ts';
import { conductorName, studName } from './words.ts';

/** @param memory of earlier states of the diagram; the study is the same without it */
export function buildStudy(diagram: Diagram, memory: Memory = createMemory()): Study {
	const profile = profileOf(diagram);
	const network = once(() => buildNetwork(diagram, describe, profile.dropResistivity.value));
	const nets = once(() => memory.keep('nets', [formOf(network())], () => netsOf(network())));
	const cases = once(() => solveCases(diagram, network(), memory));
	const atRest = once(() =>
		memory.keep('at rest', [network()], () => keptPoint('point at rest', solveCase(network(), 'at-rest', AT_REST), memory))
	);
	const worst = once(() => memory.keep('worst', [network(), cases()], () => worstByBranch(network(), cases(), memory)));
	const continuousA = once(() => branchCurrents(network(), cases(), memory));
	const loadA = once(() => loadCurrents(network(), cases(), memory));
	const parts = once(() => viewParts(diagram, memory));
	const conductors = once(() =>
		viewConductors({ diagram, profile, network: network(), worst: worst(), parts: parts(), studName: studNameOf }, memory)
	);
	// What lands where, the form tells.
	const places = once(() => memory.keep('stack places', [formOf(network())], () => stackPlaces(diagram)));
	const stacks = once(() => stacksOf(diagram, places(), memory));
	const partById = once(() => memory.keep('part by id', [parts()], () => byId(parts())));
	const placeOfConductor = once(() =>
		memory.keep('place of conductor', [formOf(network())], () => new Map(conductors().map(({ id }, place) => [id, place])))
	);
	const stackByKey = once(() => memory.keep('stack by key', [stacks()], () => new Map(stacks().map((stack) => [stack.key, stack]))));
	const faults = once(() => {
		const earlier = memory.recall('latest faults') as Faults | undefined;
		const found = memory.keep('faults', [network(), diagram.conductors], () => faultsOf(network(), diagram.conductors, earlier));
		memory.store('latest faults', found);
		return found;
	});

	const studNameOf = (key: StudKey): string => {
		const { part: id, terminal } = terminalRef(key);
		const view = partById().get(id);
		if (!view) return `${id} ${terminal}`;
		return studName(view, view.terminal(terminal)?.label ?? terminal);
	};

	const part = (id: PartId): PartView => found(partById().get(id), `part "${id}"`);

	return {
		diagram,
		memory,
		profile,
		get network() {
			return network();
		},
		get form() {
			return network();
		},
		get nets() {
			return nets();
		},
		get cases() {
			return cases();
		},
		get atRest() {
			return atRest();
		},
		get parts() {
			return parts();
		},
		get conductors() {
			return conductors();
		},
		get faults() {
			return faults();
		},
		get stacks() {
			return stacks();
		},
		part,
		conductor: (id) => found(conductors()[placeOfConductor().get(id) ?? -1], `conductor "${id}" in the network`),
		conductorName: (id) => conductorName(found(diagram.conductors[id], `conductor "${id}"`), studNameOf),
		studName: studNameOf,
		protection: (id) => protectionOf(network(), id),
		letThroughBound: (id) => letThroughBound(network(), id),
		stack: (key) => stackByKey().get(key),
		branchCurrent: (index) => found(worst().continuous[index], `branch ${index}`),
		continuousA: (index) => found(continuousA()[index], `branch ${index}`),
		loadA: (index) => found(loadA()[index], `load ${index}`),
		branch: (index) => found(network().branches[index], `branch ${index}`)
	};
}

/** Everything off and every switch closed: what flows then flows between sources. */
const AT_REST: OperatingCase = { label: 'At rest', order: 0, duration: 'continuous', loads: 0, sources: 0, levels: {} };

const solveCases = ({ cases }: Diagram, network: Network, memory: Memory): readonly CaseResult[] => {
	const entries = Object.entries(cases).sort(([, a], [, b]) => a.order - b.order);
	return memory.keepEach(
		'cases',
		entries.map(([id]) => id),
		(_, i) => [network, entries[i]![1]],
		(id, i) => ({ id, operatingCase: entries[i]![1], point: keptPoint(`point ${id}`, solveCase(network, id, entries[i]![1]), memory) })
	);
};

/** A part that was only moved looks the same. */
const viewParts = ({ parts }: Diagram, memory: Memory): readonly PartView[] =>
	memory.keep('all parts', [parts], () =>
		memory.keepEach(
			'parts',
			Object.keys(parts),
			(id) => [parts[id]!.label, describe(parts[id]!)],
			(id) => ({ id, label: parts[id]!.label, ...describe(parts[id]!) })
		)
	);

/** Greatest magnitude of each branch's current; cases without an operating point say nothing about currents. */
function worstByBranch({ branches }: Network, cases: readonly CaseResult[], memory: Memory): Worst {
	const solved = cases.filter(({ point }) => point.status === 'solved');
	const worst = (name: string, among: readonly CaseResult[]): readonly WorstCurrent[] => {
		const before = memory.recall(name) as readonly WorstCurrent[] | undefined;
		const now = branches.map((_, index) => {
			let mostA = 0;
			let caseId: WorstCurrent['caseId'] = null;
			for (const { id, point } of among) {
				const currentA = settled(Math.abs(point.branchA[index]!));
				if (currentA <= mostA) continue;
				mostA = currentA;
				caseId = id;
			}
			const known = before?.[index];
			return known?.currentA === mostA && known.caseId === caseId ? known : { currentA: mostA, caseId };
		});
		memory.store(name, now);
		return now;
	};
	return {
		continuous: worst(
			'worst continuous',
			solved.filter(({ operatingCase }) => operatingCase.duration === 'continuous')
		),
		all: worst('worst of all', solved)
	};
}

const byId = <View extends { readonly id: string }>(views: readonly View[]): ReadonlyMap<string, View> =>
	new Map(views.map((view) => [view.id, view]));

function once<Value>(make: () => Value): () => Value {
	let made: { value: Value } | null = null;
	return () => (made ??= { value: make() }).value;
}

function found<Value>(value: Value | undefined, name: string): Value {
	if (value === undefined) throw new Error(`There is no ${name}.`);
	return value;
}
