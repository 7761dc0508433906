/** Circuits spread over the places there are, in every way that has room. */
import type { Diagram, PartId } from '#core/diagram';
import { fuseFor, type OldCircuit } from './circuits.ts';
import { inBlock, nameOf, onPosition, onWay, type Comer } from './landing-kinds.ts';
import { partText } from './names.ts';
import type { Place } from './places.ts';
import type { Plan } from './plan.ts';
import type { Sketch } from './sketch.ts';

/** A circuit that is there makes room for a newcomer. */
export interface Moved {
	readonly newcomer: Comer;
	readonly old: OldCircuit;
	/** What is then still to land. */
	readonly others: readonly Comer[];
}

/** What a blade-fuse way usually carries, amps: common practice, no source. */
const WAY_A = 30;

export function* assignments(
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
		yield {
			id,
			title: `Put ${[...swapTexts(moved), ...texts].join('; ')}`,
			draw: (sketch) => {
				for (const { place, here } of used) landAt(sketch, bus, place, here);
				if (moved) onPosition(sketch, bus, moved.old.terminal, moved.newcomer);
			}
		};
	}
}

export const swapTexts = (moved: Moved | null): string[] =>
	moved ? [`${nameOf(moved.newcomer)} on position ${moved.old.terminal} in place of ${moved.old.name}`] : [];

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
export const suitsWay = (diagram: Diagram, comer: Comer): boolean =>
	comer.kind === 'old'
		? comer.circuit.fuseA <= WAY_A + 10
		: comer.circuit.source !== true && fuseFor(diagram, comer.circuit, null) <= WAY_A;

const kindId = ({ kind }: Place, count: number): string =>
	kind === 'position' ? 'position' : kind === 'way' ? 'panel' : count === 2 ? 'twin' : 'end-stud';

function placeText(diagram: Diagram, { kind, part, terminal }: Place, here: readonly Comer[]): string {
	if (kind === 'position') return `${list(here)} on free position ${terminal}`;
	if (kind === 'way') return `${list(here)} on ${here.length > 1 ? 'ways' : 'a way'} of ${partText(diagram, part)}`;
	return `${list(here)} on end stud ${terminal} in a ${here.length === 2 ? 'twin' : 'single'} fuse block`;
}

function landAt(sketch: Sketch, bus: PartId, { kind, part, terminal }: Place, here: readonly Comer[]): void {
	if (kind === 'end') inBlock(sketch, bus, { part: bus, terminal }, here);
	else if (kind === 'way') for (const comer of here) onWay(sketch, bus, part, comer);
	else for (const comer of here) onPosition(sketch, bus, terminal, comer);
}

export const list = (comers: readonly Comer[]): string => comers.map(nameOf).join(' and ');
