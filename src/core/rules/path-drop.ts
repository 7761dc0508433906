/** Volts lost between a supply and a load, and where. */
import type { Branch, LoadBranch, NodeIndex, SourceBranch } from '#core/network';
import { continuousCaseIds } from './stack-currents.ts';
import type { CaseResult, Study } from './study.ts';
import { derivedOf } from './watch.ts';
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
 *
 * @param place of the case among the continuous ones (`continuousCaseIds`)
 */
export function pathDrop(study: Study, place: number, load: LoadBranch): PathDrop | null {
	const { form, nets, diagram } = study;
	const currentA = continuousLoadA(study, place, load);
	if (!(currentA > 1e-6)) return null;

	const { batteries, sources } = supplyNodes(study);
	const [plus, minus] = [nets.of(load.positive), nets.of(load.negative)];
	const fromBattery = batteries.positive.has(plus) && batteries.negative.has(minus);
	const { positive, negative } = fromBattery ? batteries : sources;

	const there = wayBack(study, place, load.positive, positive.get(plus) ?? NONE, currentA, 1);
	const back = wayBack(study, place, load.negative, negative.get(minus) ?? NONE, currentA, -1);
	if (!there || !back) return null;
	const steps = [...there, ...back];
	const railV = fromBattery ? diagram.system.nominalV : form.sources.find((source) => nets.of(source.positive) === plus)!.setV;
	return {
		dropV: steps.reduce((sum, { dropV }) => sum + dropV, 0),
		ownV: steps.reduce((sum, { ownV }) => sum + ownV, 0),
		nominalV: NOMINAL_V.reduce((best, v) => (Math.abs(v - railV) < Math.abs(best - railV) ? v : best)),
		steps
	};
}

/** Amps a load draws in a continuous case. */
export function continuousLoadA(study: Study, place: number, { index }: LoadBranch): number {
	const caseId = continuousCaseIds(study)[place];
	return study.loadA(index).find((drawn) => drawn.caseId === caseId)!.amps;
}

/**
 * Volts a charger's own output loses between its terminals and the posts of a battery on its rail, there and back.
 * Null where it delivers nothing, or no battery is reached.
 *
 * @param place of the case among the continuous ones
 */
export function chargingDrop(study: Study, place: number, { point }: CaseResult, source: SourceBranch): number | null {
	const { form, nets } = study;
	const currentA = point.sourceA[source.index]!;
	if (!(currentA > 1e-6)) return null;
	const posts = (pole: 'positive' | 'negative') =>
		new Set(form.batteries.filter((battery) => nets.of(battery[pole]) === nets.of(source[pole])).map((battery) => battery[pole]));
	const there = wayBack(study, place, source.positive, posts('positive'), currentA, -1);
	const back = wayBack(study, place, source.negative, posts('negative'), currentA, 1);
	return there && back ? [...there, ...back].reduce((sum, { ownV }) => sum + ownV, 0) : null;
}

type Sense = 1 | -1;

/**
 * Follows the largest current from a load's terminal to the first supply terminal: `sense` 1 upstream, −1 downstream.
 * Where the way forks the load's own current is taken to divide as the whole does. Null when no supply is reached.
 */
function wayBack(
	study: Study,
	place: number,
	start: NodeIndex,
	supplies: ReadonlySet<NodeIndex>,
	loadA: number,
	sense: Sense
): Step[] | null {
	const steps: Step[] = [];
	const seen = new Set<NodeIndex>();
	let ownA = loadA;
	for (let node = start; !supplies.has(node);) {
		if (seen.has(node)) return null;
		seen.add(node);
		const main = mainInflow(study, node, sense)[place];
		if (!main) return null;
		const { currentA, arrivingA } = main;
		const branch = study.branch(main.index);
		ownA *= currentA / arrivingA;
		steps.push({ branch, dropV: currentA * branch.resistanceOhm, ownV: ownA * branch.resistanceOhm, ownA });
		node = branch.a === node ? branch.b : branch.a;
	}
	return steps;
}

/** The branch that brings most to a node, and what all bring together. */
interface Inflow {
	readonly index: number;
	readonly currentA: number;
	readonly arrivingA: number;
}

/** By continuous case; null where nothing arrives. Shared by all loads beyond. */
const mainInflow = (study: Study, node: NodeIndex, sense: Sense): readonly (Inflow | null)[] =>
	sense === 1 ? inflowUpstream(study, node) : inflowDownstream(study, node);
const inflowUpstream = derivedOf((study, node: NodeIndex) => inflowsAt(study, node, 1));
const inflowDownstream = derivedOf((study, node: NodeIndex) => inflowsAt(study, node, -1));

function inflowsAt(study: Study, node: NodeIndex, sense: Sense): readonly (Inflow | null)[] {
	const { branches, branchesAt } = study.form;
	const currents = branchesAt[node]!.map((index) => ({ index, isInto: branches[index]!.b === node, byCase: study.continuousA(index) }));
	return continuousCaseIds(study).map((_, place) => {
		let main: { readonly index: number; readonly currentA: number } | null = null;
		let arrivingA = 0;
		for (const { index, isInto, byCase } of currents) {
			const { amps } = byCase[place]!;
			const currentA = sense * (isInto ? amps : -amps);
			if (!(currentA > 1e-9)) continue;
			arrivingA += currentA;
			if (!main || currentA > main.currentA) main = { index, currentA };
		}
		return main && { ...main, arrivingA };
	});
}
