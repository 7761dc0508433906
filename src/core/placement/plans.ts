/** Every way worth trying to land new circuits on a full bus. */
import { removeItems, type Diagram, type PartId } from '#core/diagram';
import { assignments, list, suitsWay, swapTexts, type Moved } from './assignments.ts';
import { circuitsOn, newcomersOf, type Newcomer, type OldCircuit } from './circuits.ts';
import { inBlock, nameOf, onAdapter, onPosition, panelsOn, type Comer } from './landing-kinds.ts';
import { behindOneFuse } from './merge.ts';
import { partText, studText } from './names.ts';
import { onNewPanel } from './new-panel.ts';
import { onLongerBus, onSecondBus, strongerFuses } from './other-bus.ts';
import { placesOn, type Place } from './places.ts';
import type { Plan } from './plan.ts';
import type { FullBusRequest } from './request.ts';
import { fuseFamily } from '#core/tables';
import { upstreamStuds } from './upstream.ts';

/** A circuit moves with its lug and fuse up to this rating: common practice, no source. */
const MOVABLE_A = 100;
/** Studs nearer to the batteries that are tried, and circuits that may go or share. */
const MOST_STUDS = 3;
const MOST_PARTNERS = 2;

export function* plansFor(diagram: Diagram, { bus, circuits }: FullBusRequest): Generator<Plan> {
	const comers = newcomersOf(diagram, circuits);
	const old = circuitsOn(diagram, bus);
	const places = placesOn(diagram, bus, old);
	const moves = movable(diagram, bus, comers, old);
	const ends = places.filter(({ kind }) => kind === 'end');
	yield* otherBuses(diagram, bus, comers, moves, ends);
	yield* adapters(bus, comers, ends);
	yield* furtherFuses(diagram, bus, comers);
	yield* newPanels(diagram, bus, comers, old, ends);
	yield* sharedOrGone(diagram, bus, comers, old);
	yield* assignments(diagram, bus, comers, places, null);
	for (const moved of moves) yield* assignments(diagram, bus, moved.others, places, moved);
}

/** A smaller circuit makes room for the largest newcomer. */
function movable(diagram: Diagram, bus: PartId, comers: readonly Comer[], old: readonly OldCircuit[]): Moved[] {
	const sizeOf = (comer: Comer): number => (comer.kind === 'new' ? comer.circuit.currentA : comer.circuit.fuseA);
	const [newcomer] = comers.toSorted((a, b) => sizeOf(b) - sizeOf(a));
	if (newcomer?.kind !== 'new') return [];
	const neededA = newcomer.circuit.fuseA ?? newcomer.circuit.currentA / 0.8;
	const panels = panelsOn(diagram, old);
	return old
		.filter(({ fuseA, device }) => fuseA <= MOVABLE_A && fuseA < neededA && !panels.includes(device))
		.sort((a, b) => a.fuseA - b.fuseA)
		.map((circuit) => ({
			newcomer,
			old: circuit,
			others: [...comers.filter((comer) => comer !== newcomer), { kind: 'old' as const, circuit }]
		}));
}

/** A second bus, with or without the heaviest newcomer on the first; or a longer one. */
function* otherBuses(
	diagram: Diagram,
	bus: PartId,
	comers: readonly Comer[],
	moves: readonly Moved[],
	ends: readonly Place[]
): Generator<Plan> {
	const stronger = strongerFuses(diagram, bus);
	for (const family of [...(stronger ? [stronger] : []), undefined]) {
		const which = family ? ` for ${fuseFamily(family).name}s` : '';
		for (const { terminal } of ends)
			yield {
				id: 'second-bus',
				title: `Link a second bus${which} to end stud ${terminal} and put ${list(comers)} on it`,
				draw: (sketch) => onSecondBus(sketch, bus, terminal, comers, family)
			};
		const [end] = ends;
		for (const moved of end ? moves : [])
			yield {
				id: 're-shuffle+second-bus',
				title: `Put ${swapTexts(moved)[0]!}; link a second bus${which} to end stud ${end!.terminal} with ${list(moved.others)} on it`,
				draw: (sketch) => {
					onSecondBus(sketch, bus, end!.terminal, moved.others, family);
					onPosition(sketch, bus, moved.old.terminal, moved.newcomer);
				}
			};
	}
	yield { id: 'longer-bus', title: `Use a longer bus and put ${list(comers)} on it`, draw: (sketch) => onLongerBus(sketch, bus, comers) };
}

/** A second landing place on an end stud that is full for its height, not for its current. */
function* adapters(bus: PartId, comers: readonly Comer[], ends: readonly Place[]): Generator<Plan> {
	if (comers.length > MOST_FACES) return;
	for (const { terminal } of ends)
		yield {
			id: 'adapter+end-stud',
			title: `Fit an adapter post on end stud ${terminal} and put ${list(comers)} on it, each in a fuse block`,
			draw: (sketch) => onAdapter(sketch, bus, { part: bus, terminal }, comers)
		};
}

const MOST_FACES = 2;

/** The fuse nearer to the batteries; only the return comes to the bus of returns. */
function* furtherFuses(diagram: Diagram, bus: PartId, comers: readonly Comer[]): Generator<Plan> {
	if (comers.length > 2) return;
	for (const { before, ...on } of upstreamStuds(diagram, bus).slice(0, MOST_STUDS)) {
		yield {
			id: 'upstream',
			title: `Put ${list(comers)} in a ${comers.length === 2 ? 'twin' : 'single'} fuse block on ${studText(diagram, on)}, before the bus`,
			draw: (sketch) => {
				inBlock(sketch, bus, on, comers);
				if (before !== null) sketch.risks.push(`${partText(diagram, before)} does not switch ${list(comers)} off.`);
			}
		};
	}
}

/** Small circuits on a new panel, fed from an end stud or from the position of a small circuit that joins them. */
function* newPanels(
	diagram: Diagram,
	bus: PartId,
	comers: readonly Comer[],
	old: readonly OldCircuit[],
	ends: readonly Place[]
): Generator<Plan> {
	if (!comers.every((comer) => suitsWay(diagram, comer))) return;
	for (const { terminal } of comers.length > 1 ? ends : [])
		yield {
			id: 'new-panel+end-stud',
			title: `Put ${list(comers)} on a new blade-fuse panel fed from end stud ${terminal}`,
			draw: (sketch) => onNewPanel(sketch, bus, { end: terminal }, comers)
		};
	const absorbed = old.find((circuit) => suitsWay(diagram, { kind: 'old', circuit }));
	if (absorbed)
		yield {
			id: 'new-panel+re-shuffle',
			title: `Put ${list(comers)} and ${absorbed.name} on a new blade-fuse panel fed from position ${absorbed.terminal}`,
			draw: (sketch) => onNewPanel(sketch, bus, { position: absorbed.terminal }, [...comers, { kind: 'old', circuit: absorbed }])
		};
}

/** One newcomer behind the fuse of a circuit that is there, with a fuse for each where they part; or in place of one that goes. */
function* sharedOrGone(diagram: Diagram, bus: PartId, comers: readonly Newcomer[], old: readonly OldCircuit[]): Generator<Plan> {
	const [comer] = comers;
	if (!comer || comers.length > 1) return;
	const panels = panelsOn(diagram, old);
	const partners = old
		.filter(({ device }) => !panels.includes(device))
		.sort((a, b) => a.fuseA - b.fuseA)
		.slice(0, MOST_PARTNERS);
	for (const partner of partners) {
		yield {
			id: 'merge',
			title: `Put ${nameOf(comer)} and ${partner.name} behind position ${partner.terminal}, with a fuse for each near ${partner.name}`,
			draw: (sketch) => behindOneFuse(sketch, bus, partner, comer)
		};
		yield {
			id: 'reduce',
			title: `Take ${partner.name} out and put ${nameOf(comer)} on position ${partner.terminal}`,
			draw: (sketch) => {
				sketch.asks = `Only if ${partner.name} is no longer needed, or ${nameOf(comer)} does its work.`;
				const gone = Object.entries(sketch.diagram.conductors).filter(([, { from, to }]) => [from.part, to.part].includes(partner.device));
				sketch.run(removeItems({ parts: [partner.device], conductors: gone.map(([id]) => id) }));
				sketch.steps.push(`${partner.name} and its conductors go.`);
				onPosition(sketch, bus, partner.terminal, comer);
			}
		};
	}
}
