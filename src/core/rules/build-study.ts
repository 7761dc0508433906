/** Works out a study; what costs something is done on first use and kept, as far as it still holds for the next one. */
import { surroundingsOf, terminalRef, type ConductorId, type Diagram, type OperatingCase, type PartId, type StudKey } from '#core/diagram';
import { faultsOf, type Faults } from '#core/faults';
import { createMemory, type Memory } from '#core/memory';
import { buildNetwork, formOf, usedLengthM, type Network, type Pole } from '#core/network';
import { describe } from '#core/parts';
import { greatestDevice, profileOf } from '#core/profiles';
import { letThroughBound, protectionOf } from '#core/protection';
import { solveCase } from '#core/solver';
import { stackPlaces, stacksOf } from '#core/studs';
import { settled } from '#core/units';
import { branchCurrents, loadCurrents } from './case-currents.ts';
import { amperageIn } from './amperage.ts';
import { netsOf } from './nets.ts';
import { keptPoint } from './same-point.ts';
import type { CaseResult, ConductorView, PartView, Study, WorstCurrent } from './study.ts';
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
	const conductors = once(() => viewConductors());
	// What lands where, the form tells.
	const places = once(() => memory.keep('stack places', [formOf(network())], () => stackPlaces(diagram)));
	const stacks = once(() => stacksOf(diagram, places(), memory));
	const partById = once(() => memory.keep('part by id', [parts()], () => byId(parts())));
	const conductorById = once(() => memory.keep('conductor by id', [conductors()], () => byId(conductors())));
	const stackByKey = once(() => memory.keep('stack by key', [stacks()], () => new Map(stacks().map((stack) => [stack.key, stack]))));
	const faults = once(() => {
		const earlier = memory.recall('latest faults') as Faults | undefined;
		const found = memory.keep('faults', [network(), diagram.conductors], () => faultsOf(network(), diagram.conductors, earlier));
		memory.store('latest faults', found);
		return found;
	});

	const viewConductors = (): readonly ConductorView[] => {
		const { branchOfConductor, branches, poles } = network();
		const { continuous, all } = worst();
		const ids = Object.keys(diagram.conductors).filter((id) => branchOfConductor.has(id));
		const { nominalV } = diagram.system;
		const found = ids.map((id) => surroundingsOf(diagram, diagram.conductors[id]!));
		// Found anew each time, and the same value while it says the same.
		const arounds = memory.keepEach(
			'surroundings',
			ids,
			(_, i) => [found[i]!.environment, found[i]!.ambientC, found[i]!.area],
			(_, i) => found[i]!
		);
		const ampacities = memory.keepEach(
			'amperages',
			ids,
			(id, i) => [diagram.conductors[id], profile, nominalV, arounds[i]],
			(id, i) => {
				const ampacity = amperageIn(profile, nominalV, diagram.conductors[id]!, arounds[i]!);
				return { ampacity, limit: greatestDevice(profile, ampacity, nominalV) };
			}
		);
		const indexOf = (id: ConductorId): number => branchOfConductor.get(id)!;
		const poleOf = (index: number): Pole => poleBetween(poles[branches[index]!.a]!, poles[branches[index]!.b]!);
		const nameOf = (id: ConductorId): string => conductorName(diagram.conductors[id]!, studNameOf);
		return memory.keepEach(
			'conductors',
			ids,
			(id, i) => {
				const index = indexOf(id);
				return [
					diagram.conductors[id],
					arounds[i],
					branches[index],
					nameOf(id),
					poleOf(index),
					ampacities[i],
					continuous[index],
					all[index]
				];
			},
			(id, i) => {
				const index = indexOf(id);
				const conductor = diagram.conductors[id]!;
				return {
					id,
					name: nameOf(id),
					conductor,
					around: arounds[i]!,
					branch: branches[index]!,
					...usedLengthM(conductor),
					pole: poleOf(index),
					...ampacities[i]!,
					continuous: continuous[index]!,
					surge: all[index]!
				};
			}
		);
	};

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
		conductor: (id) => found(conductorById().get(id), `conductor "${id}" in the network`),
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
	memory.keepEach(
		'parts',
		Object.keys(parts),
		(id) => [parts[id]!.label, describe(parts[id]!)],
		(id) => ({ id, label: parts[id]!.label, ...describe(parts[id]!) })
	);

interface Worst {
	readonly continuous: readonly WorstCurrent[];
	readonly all: readonly WorstCurrent[];
}

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

function poleBetween(a: Pole, b: Pole): Pole {
	if (a === b || b === 'floating') return a;
	return a === 'floating' ? b : 'shorted';
}

function once<Value>(make: () => Value): () => Value {
	let made: { value: Value } | null = null;
	return () => (made ??= { value: make() }).value;
}

function found<Value>(value: Value | undefined, name: string): Value {
	if (value === undefined) throw new Error(`There is no ${name}.`);
	return value;
}
