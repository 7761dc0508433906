/** Conductors as rules see them. A view is the one before while all that it shows is the same. */
import { surroundingsOf, type Conductor, type ConductorId, type Diagram, type StudKey, type Surroundings } from '#core/diagram';
import { isAlike, isSame, type Memory } from '#core/memory';
import { formOf, usedLengthM, type Network, type Pole } from '#core/network';
import { greatestDevice, type Profile } from '#core/profiles';
import { amperageIn } from './amperage.ts';
import type { ConductorView, PartView, WorstCurrent } from './study.ts';
import { conductorName } from './words.ts';

/** Greatest currents by branch. */
export interface Worst {
	readonly continuous: readonly WorstCurrent[];
	readonly all: readonly WorstCurrent[];
}

interface Ingredients {
	readonly diagram: Diagram;
	readonly profile: Profile;
	readonly network: Network;
	readonly worst: Worst;
	readonly parts: readonly PartView[];
	readonly studName: (key: StudKey) => string;
}

interface Kept {
	/** What concerns all of them. */
	readonly common: readonly unknown[];
	readonly amperage: readonly unknown[];
	/** What their surroundings follow from. */
	readonly places: readonly unknown[];
	readonly views: readonly ConductorView[];
}

/** In the diagram's order, those in the network. */
export function viewConductors(from: Ingredients, memory: Memory): readonly ConductorView[] {
	const { diagram, profile, network, worst, parts } = from;
	const { conductors } = diagram;
	const { ids, indices } = memory.keep('conductors in the network', [formOf(network)], () => placesOf(network, conductors));
	const amperage = [profile, diagram.system.nominalV];
	// Where no area is drawn it does not matter where parts are.
	const places = [diagram.areas, diagram.ambient, diagram.mounts, Object.keys(diagram.areas).length > 0 ? diagram.parts : null];
	const common = [formOf(network), parts, ...amperage];
	const before = memory.recall('conductor views') as Kept | undefined;
	const isLike = before !== undefined && isSame(before.common, common);
	const isPlacedAlike = before !== undefined && isSame(before.places, places);
	const isRatedAlike = before !== undefined && isSame(before.amperage, amperage);
	const find = finder(before?.views ?? []);
	const views = ids.map((id, i) => {
		const index = indices[i]!;
		const known = find(id, i);
		const shows =
			known?.conductor === conductors[id] &&
			known!.branch === network.branches[index] &&
			known!.continuous === worst.continuous[index] &&
			known!.surge === worst.all[index];
		if (shows && isLike && isPlacedAlike) return known!;
		const isItself = known?.conductor === conductors[id];
		const around = isItself && isPlacedAlike ? known!.around : surroundings(diagram, conductors[id]!, known);
		const now = viewOf(from, id, index, around, isItself && isRatedAlike && around === known!.around ? known! : null);
		return known && isSame(Object.values(known), Object.values(now)) ? known : now;
	});
	const kept = before && isSame(before.views, views) ? before.views : views;
	memory.store('conductor views', { common, amperage, places, views: kept } satisfies Kept);
	return kept;
}

/** @param rated the view before, where the conductor's amperage is the same */
function viewOf(
	{ diagram, profile, network, worst, studName }: Ingredients,
	id: ConductorId,
	index: number,
	around: Surroundings,
	rated: ConductorView | null
): ConductorView {
	const conductor = diagram.conductors[id]!;
	const { nominalV } = diagram.system;
	const ampacity = rated?.ampacity ?? amperageIn(profile, nominalV, conductor, around);
	const branch = network.branches[index]!;
	return {
		id,
		name: conductorName(conductor, studName),
		conductor,
		around,
		branch,
		...usedLengthM(conductor),
		pole: poleBetween(network.poles[branch.a]!, network.poles[branch.b]!),
		ampacity,
		limit: rated?.limit ?? greatestDevice(profile, ampacity, nominalV),
		continuous: worst.continuous[index]!,
		surge: worst.all[index]!
	};
}

/** Those before, where they say the same. */
function surroundings(diagram: Diagram, conductor: Conductor, known: ConductorView | undefined): Surroundings {
	const around = surroundingsOf(diagram, conductor);
	return known && isAlike(known.around, around) ? known.around : around;
}

function placesOf({ branchOfConductor }: Network, conductors: Readonly<Record<ConductorId, Conductor>>) {
	const ids = Object.keys(conductors).filter((id) => branchOfConductor.has(id));
	return { ids, indices: Int32Array.from(ids, (id) => branchOfConductor.get(id)!) };
}

/** By place, which an edit seldom changes; else by id. */
function finder(views: readonly ConductorView[]): (id: ConductorId, place: number) => ConductorView | undefined {
	let byId: Map<ConductorId, ConductorView> | null = null;
	return (id, place) => {
		if (views[place]?.id === id) return views[place];
		byId ??= new Map(views.map((view) => [view.id, view]));
		return byId.get(id);
	};
}

function poleBetween(a: Pole, b: Pole): Pole {
	if (a === b || b === 'floating') return a;
	return a === 'floating' ? b : 'shorted';
}
