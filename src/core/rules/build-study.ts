/** Works out a study; what costs something is done on first use and kept. */
import { terminalRef, type Conductor, type ConductorId, type Diagram, type OperatingCase, type PartId, type StudKey } from '#core/diagram';
import { faultsOf } from '#core/faults';
import { buildNetwork, usedLengthM, type Network, type Pole } from '#core/network';
import { describe } from '#core/parts';
import { profileOf } from '#core/profiles';
import { protectionOf } from '#core/protection';
import { solveCase } from '#core/solver';
import { stacksOf } from '#core/studs';
import { netsOf } from './nets.ts';
import type { CaseResult, ConductorView, PartView, Study, WorstCurrent } from './study.ts';
import { conductorName, studName } from './words.ts';

export function buildStudy(diagram: Diagram): Study {
	const profile = profileOf(diagram);
	const network = once(() => buildNetwork(diagram, describe, profile.dropResistivity.value));
	const nets = once(() => netsOf(network()));
	const cases = once(() => solveCases(diagram, network()));
	const atRest = once(() => solveCase(network(), 'at-rest', AT_REST));
	const worst = once(() => worstByBranch(network(), cases()));
	const partViews = once(
		() => new Map(Object.entries(diagram.parts).map(([id, part]) => [id, { id, label: part.label, ...describe(part) }]))
	);
	const conductorViews = once(() => new Map(conductorEntries().map((view) => [view.id, view])));
	const parts = once(() => [...partViews().values()]);
	const conductors = once(() => [...conductorViews().values()]);
	const stacks = once(() => stacksOf(diagram));
	const stackByKey = once(() => new Map(stacks().map((stack) => [stack.key, stack])));
	const protection = memo((id: ConductorId) => protectionOf(network(), id));

	const faults = once(() => faultsOf(network(), diagram.conductors));

	const part = (id: PartId): PartView => found(partViews().get(id), `part "${id}"`);

	const conductorEntries = (): ConductorView[] =>
		Object.entries(diagram.conductors).flatMap(([id, conductor]) => {
			const index = network().branchOfConductor.get(id);
			return index === undefined ? [] : [viewConductor(id, conductor, index)];
		});

	const viewConductor = (id: ConductorId, conductor: Conductor, index: number): ConductorView => {
		const branch = network().branches[index]!;
		return {
			id,
			name: conductorName(conductor, studNameOf),
			conductor,
			branch,
			...usedLengthM(conductor),
			pole: poleBetween(network().poles[branch.a]!, network().poles[branch.b]!),
			ampacity: profile.ampacity(conductor, diagram.system.nominalV, diagram.ambient),
			continuous: worst().continuous[index]!,
			surge: worst().all[index]!
		};
	};

	const studNameOf = (key: StudKey): string => {
		const { part: id, terminal } = terminalRef(key);
		const view = partViews().get(id);
		if (!view) return `${id} ${terminal}`;
		return studName(view, view.terminals.find((t) => t.id === terminal)?.label ?? terminal);
	};

	return {
		diagram,
		profile,
		get network() {
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
		conductor: (id) => found(conductorViews().get(id), `conductor "${id}" in the network`),
		conductorName: (id) => conductorName(found(diagram.conductors[id], `conductor "${id}"`), studNameOf),
		studName: studNameOf,
		protection,
		stack: (key) => stackByKey().get(key),
		branchCurrent: (index) => found(worst().continuous[index], `branch ${index}`)
	};
}

/** Everything off and every switch closed: what flows then flows between sources. */
const AT_REST: OperatingCase = { label: 'At rest', order: 0, duration: 'continuous', loads: 0, sources: 0, levels: {} };

const solveCases = ({ cases }: Diagram, network: Network): CaseResult[] =>
	Object.entries(cases)
		.sort(([, a], [, b]) => a.order - b.order)
		.map(([id, operatingCase]) => ({ id, operatingCase, point: solveCase(network, id, operatingCase) }));

/** Greatest magnitude of each branch's current; cases without an operating point say nothing about currents. */
function worstByBranch({ branches }: Network, cases: readonly CaseResult[]): { continuous: WorstCurrent[]; all: WorstCurrent[] } {
	const solved = cases.filter(({ point }) => point.status === 'solved');
	const worst = (among: readonly CaseResult[]) =>
		branches.map((_, index) => {
			let worst: WorstCurrent = { currentA: 0, caseId: null };
			for (const { id, point } of among) {
				const currentA = Math.abs(point.branchA[index]!);
				if (currentA > worst.currentA) worst = { currentA, caseId: id };
			}
			return worst;
		});
	return { continuous: worst(solved.filter(({ operatingCase }) => operatingCase.duration === 'continuous')), all: worst(solved) };
}

function poleBetween(a: Pole, b: Pole): Pole {
	if (a === b || b === 'floating') return a;
	return a === 'floating' ? b : 'shorted';
}

function once<Value>(make: () => Value): () => Value {
	let made: { value: Value } | null = null;
	return () => (made ??= { value: make() }).value;
}

function memo<Key, Value>(make: (key: Key) => Value): (key: Key) => Value {
	const made = new Map<Key, Value>();
	return (key) => {
		if (!made.has(key)) made.set(key, make(key));
		return made.get(key)!;
	};
}

function found<Value>(value: Value | undefined, name: string): Value {
	if (value === undefined) throw new Error(`There is no ${name}.`);
	return value;
}
