/** Volts lost between a supply and a load, and where. */
import type { Branch, LoadBranch, NodeIndex, SourceBranch } from '#core/network';
import type { OperatingPoint } from '#core/solver';
import type { Study } from './study.ts';
import { supplyNodes } from './wiring.ts';

export interface Step {
	readonly branch: Branch;
	/** Lost in this branch to everything that flows through it, volts. */
	readonly dropV: number;
	/** Lost in it to the load's own current alone. */
	readonly ownV: number;
	/** The load's own current through it, amps. */
	readonly ownA: number;
}

export interface PathDrop {
	/** Lost on the way there and back with everything in the case on. */
	readonly dropV: number;
	/** Lost to the load's own current alone: what the sizing formulas for a circuit compute. */
	readonly ownV: number;
	/** Nominal voltage that percentages are taken of. */
	readonly nominalV: number;
	/** The way from the load's positive terminal back to the supply, then from its negative terminal. */
	readonly steps: readonly Step[];
}

const NOMINAL_V = [12, 24, 48];
const NONE: ReadonlySet<NodeIndex> = new Set();

/**
 * The way to a load from the battery posts it is fed from and back to them; on a converter's rail, from the
 * converter's terminals. Null where the load draws nothing, or draws from a charger: then it has more than the
 * battery's voltage.
 */
export function pathDrop(study: Study, point: OperatingPoint, load: LoadBranch): PathDrop | null {
	const { network, nets, diagram } = study;
	const currentA = point.loadA[load.index]!;
	if (!(currentA > 1e-6)) return null;

	const { batteries, sources } = supplyNodes(study);
	const [plus, minus] = [nets.of(load.positive), nets.of(load.negative)];
	const fromBattery = batteries.positive.has(plus) && batteries.negative.has(minus);
	const { positive, negative } = fromBattery ? batteries : sources;

	const there = wayBack(network, point, load.positive, positive.get(plus) ?? NONE, currentA, 1);
	const back = wayBack(network, point, load.negative, negative.get(minus) ?? NONE, currentA, -1);
	if (!there || !back) return null;
	const steps = [...there, ...back];
	const railV = fromBattery ? diagram.system.nominalV : network.sources.find((source) => nets.of(source.positive) === plus)!.setV;
	return {
		dropV: steps.reduce((sum, { dropV }) => sum + dropV, 0),
		ownV: steps.reduce((sum, { ownV }) => sum + ownV, 0),
		nominalV: NOMINAL_V.reduce((best, v) => (Math.abs(v - railV) < Math.abs(best - railV) ? v : best)),
		steps
	};
}

/**
 * Volts a charger's own output loses between its terminals and the posts of a battery on its rail, there and back.
 * Null where it delivers nothing, or no battery is reached.
 */
export function chargingDrop({ network, nets }: Study, point: OperatingPoint, source: SourceBranch): number | null {
	const currentA = point.sourceA[source.index]!;
	if (!(currentA > 1e-6)) return null;
	const posts = (pole: 'positive' | 'negative') =>
		new Set(network.batteries.filter((battery) => nets.of(battery[pole]) === nets.of(source[pole])).map((battery) => battery[pole]));
	const there = wayBack(network, point, source.positive, posts('positive'), currentA, -1);
	const back = wayBack(network, point, source.negative, posts('negative'), currentA, 1);
	return there && back ? [...there, ...back].reduce((sum, { ownV }) => sum + ownV, 0) : null;
}

/**
 * Follows the largest current from a load's terminal to the first supply terminal: `sense` 1 upstream, −1 downstream.
 * Where the way forks the load's own current is taken to divide as the whole does. Null when no supply is reached.
 */
function wayBack(
	network: Study['network'],
	point: OperatingPoint,
	start: NodeIndex,
	supplies: ReadonlySet<NodeIndex>,
	loadA: number,
	sense: 1 | -1
): Step[] | null {
	const steps: Step[] = [];
	const seen = new Set<NodeIndex>();
	let ownA = loadA;
	for (let node = start; !supplies.has(node);) {
		if (seen.has(node)) return null;
		seen.add(node);
		let main: { branch: Branch; currentA: number } | null = null;
		let arrivingA = 0;
		for (const index of network.branchesAt[node]!) {
			const branch = network.branches[index]!;
			const currentA = sense * (branch.b === node ? point.branchA[index]! : -point.branchA[index]!);
			if (!(currentA > 1e-9)) continue;
			arrivingA += currentA;
			if (!main || currentA > main.currentA) main = { branch, currentA };
		}
		if (!main) return null;
		const { branch, currentA } = main;
		ownA *= currentA / arrivingA;
		steps.push({ branch, dropV: currentA * branch.resistanceOhm, ownV: ownA * branch.resistanceOhm, ownA });
		node = branch.a === node ? branch.b : branch.a;
	}
	return steps;
}
