/** Every way worth trying to land new circuits on a full bus. */
import { studKey, type Diagram, type PartId } from '#core/diagram';
import { describe } from '#core/parts';
import { landings } from '#core/studs';
import { barOf } from './bar.ts';
import { circuitsOn, fuseFor, type OldCircuit } from './circuits.ts';
import { fuseBehind } from './holders.ts';
import { nameOf, onEndStud, onLongerBus, onPosition, onSecondBus, onWay, panelsOn, type Comer } from './landing-kinds.ts';
import type { FullBusRequest } from './request.ts';
import type { Sketch } from './sketch.ts';

export interface Plan {
	readonly id: string;
	readonly title: string;
	readonly draw: (sketch: Sketch) => void;
}

/** What a blade-fuse way usually carries, amps: common practice, no source. */
const WAY_A = 30;
/** A circuit moves with its lug and fuse up to this rating: common practice, no source. */
const MOVABLE_A = 100;
const PER_END = 2;

type Place = { readonly kind: 'position' | 'end' | 'way'; readonly part: PartId; readonly terminal: string; readonly room: number };

export function* plansFor(diagram: Diagram, { bus, circuits }: FullBusRequest): Generator<Plan> {
	const comers = circuits.map((circuit): Comer => ({ kind: 'new', circuit }));
	const old = circuitsOn(diagram, bus);
	const places = placesOn(diagram, bus, old);
	for (const { terminal } of places.filter(({ kind }) => kind === 'end')) {
		yield {
			id: 'second-bus',
			title: `Link a second bus to end stud ${terminal} and put ${list(comers)} on it`,
			draw: (sketch) => onSecondBus(sketch, bus, terminal, comers)
		};
	}
	yield { id: 'longer-bus', title: `Use a longer bus and put ${list(comers)} on it`, draw: (sketch) => onLongerBus(sketch, bus, comers) };
	yield* assignments(diagram, bus, comers, places, null);
	for (const moved of movable(diagram, bus, comers, old)) yield* assignments(diagram, bus, moved.others, places, moved);
}

function placesOn(diagram: Diagram, bus: PartId, old: readonly OldCircuit[]): Place[] {
	const landed = landings(diagram);
	const load = (terminal: string) => landed.get(studKey({ part: bus, terminal }))?.length ?? 0;
	const slots = barOf(diagram, bus)?.slots ?? [];
	return [
		...slots
			.filter(({ terminal, fused }) => fused && load(terminal) === 0 && !fuseBehind(diagram.parts[bus]!, terminal))
			.map(({ terminal }) => ({ kind: 'position' as const, part: bus, terminal, room: 1 })),
		...panelsOn(diagram, old).map((part) => ({ kind: 'way' as const, part, terminal: '', room: 4 })),
		// The emptier end first; a feed shares its stud only if it must.
		...slots
			.filter(({ terminal, fused }) => !fused && describe(diagram.parts[bus]!).terminal(terminal)?.acceptsBlock !== false)
			.sort((a, b) => load(a.terminal) - load(b.terminal))
			.map(({ terminal }) => ({ kind: 'end' as const, part: bus, terminal, room: PER_END }))
	];
}

interface Moved {
	readonly newcomer: Comer;
	readonly old: OldCircuit;
	/** What is then still to land. */
	readonly others: readonly Comer[];
}

/** A smaller circuit makes room for the largest newcomer. */
function movable(diagram: Diagram, bus: PartId, comers: readonly Comer[], old: readonly OldCircuit[]): Moved[] {
	const sizeOf = (comer: Comer): number => (comer.kind === 'new' ? comer.circuit.currentA : comer.circuit.fuseA);
	const [newcomer] = comers.toSorted((a, b) => sizeOf(b) - sizeOf(a));
	if (newcomer?.kind !== 'new') return [];
	const neededA = newcomer.circuit.fuseA ?? newcomer.circuit.currentA / 0.8;
	return old
		.filter(({ fuseA, device }) => fuseA <= MOVABLE_A && fuseA < neededA && !panelsOn(diagram, old).includes(device))
		.sort((a, b) => a.fuseA - b.fuseA)
		.map((circuit) => ({
			newcomer,
			old: circuit,
			others: [...comers.filter((comer) => comer !== newcomer), { kind: 'old' as const, circuit }]
		}));
}

/** Each circuit to one of the places, as far as there is room. */
function* assignments(
	diagram: Diagram,
	bus: PartId,
	comers: readonly Comer[],
	places: readonly Place[],
	moved: Moved | null
): Generator<Plan> {
	for (const choice of choices(diagram, comers, places)) {
		const used = places.flatMap((place) => {
			const here = comers.filter((_, index) => choice[index] === place);
			return here.length > 0 ? [{ place, here }] : [];
		});
		const id = [...(moved ? ['re-shuffle'] : []), ...used.map(({ place, here }) => kindId(place, here.length))].join('+');
		const texts = used.map(({ place, here }) => placeText(diagram, place, here));
		const first = moved ? [`${nameOf(moved.newcomer)} on position ${moved.old.terminal} in place of ${moved.old.name}`] : [];
		const title = [...first, ...texts].join('; ');
		yield {
			id,
			title: `Put ${title}`,
			draw: (sketch) => {
				for (const { place, here } of used) landAt(sketch, bus, place, here);
				if (moved) onPosition(sketch, bus, moved.old.terminal, moved.newcomer);
			}
		};
	}
}

function* choices(
	diagram: Diagram,
	comers: readonly Comer[],
	places: readonly Place[],
	chosen: readonly Place[] = []
): Generator<readonly Place[]> {
	const comer = comers[chosen.length];
	if (!comer) {
		yield chosen;
		return;
	}
	const isFirstPosition = (place: Place) => places.find((other) => other.kind === 'position' && !chosen.includes(other)) === place;
	for (const place of places) {
		if (chosen.filter((other) => other === place).length >= place.room) continue;
		if (place.kind === 'position' && !isFirstPosition(place)) continue;
		if (place.kind === 'way' && !suitsWay(diagram, comer)) continue;
		yield* choices(diagram, comers, places, [...chosen, place]);
	}
}

/** Small enough for a blade fuse; a charger belongs on the bus itself. A circuit that is there is tried by its fuse. */
const suitsWay = (diagram: Diagram, comer: Comer): boolean =>
	comer.kind === 'old'
		? comer.circuit.fuseA <= WAY_A + 10
		: comer.circuit.source !== true && fuseFor(diagram, comer.circuit, null) <= WAY_A;

const kindId = ({ kind }: Place, count: number): string =>
	kind === 'position' ? 'position' : kind === 'way' ? 'panel' : count === 2 ? 'twin' : 'end-stud';

function placeText(diagram: Diagram, { kind, part, terminal }: Place, here: readonly Comer[]): string {
	if (kind === 'position') return `${list(here)} on free position ${terminal}`;
	if (kind === 'way') return `${list(here)} on ${here.length > 1 ? 'ways' : 'a way'} of ${diagram.parts[part]!.label.trim() || part}`;
	return `${list(here)} on end stud ${terminal} in a ${here.length === 2 ? 'twin' : 'single'} fuse block`;
}

function landAt(sketch: Sketch, bus: PartId, { kind, part, terminal }: Place, here: readonly Comer[]): void {
	if (kind === 'end') onEndStud(sketch, bus, terminal, here);
	else if (kind === 'way') for (const comer of here) onWay(sketch, bus, part, comer);
	else for (const comer of here) onPosition(sketch, bus, terminal, comer);
}

const list = (comers: readonly Comer[]): string => comers.map(nameOf).join(' and ');
