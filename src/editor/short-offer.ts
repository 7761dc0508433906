/** A short dropped on the drawing, followed to its end, as plain data with names as on the drawing. */
import { shortCircuitEndC } from '#core/conductors';
import { itemKey, parseItemKey, studKey, surroundingsOf, type ConductorEnd, type Diagram, type ItemKey, type StudKey } from '#core/diagram';
import { studyOf, type FigureId } from '#core/explain';
import { HELD_S, shortStory, type Condition, type Pace, type Stretch } from '#core/faults';
import type { NodeIndex } from '#core/network';
import { deviceName, isUnverified, partName, type Study } from '#core/rules';
import { fuseTimes } from '#core/tables';
import { nodeNames } from './node-names.ts';

export interface ShortAsk {
	/** A stud or a conductor. */
	readonly item: ItemKey;
	/** Which end of a conductor; null takes the one a short feeds least, which is the hardest to clear. */
	readonly end: ConductorEnd | null;
	/** Terminal the short goes to; null for the return of the circuit. */
	readonly to: StudKey | null;
	readonly shortOhm: number;
	readonly condition: Condition;
}

export interface ShortDevice {
	readonly key: ItemKey;
	readonly name: string;
	readonly ratingA: number;
	readonly currentA: number;
}

export interface ShortStep {
	readonly fromS: number;
	/** Infinity for the last. */
	readonly toS: number;
	readonly currentA: number;
	/** Those that carry something, the most loaded for their rating first. */
	readonly devices: readonly ShortDevice[];
	/** What opens at the end; null for the last. */
	readonly opens: { readonly key: ItemKey; readonly name: string } | null;
	/** Conductors warmed by it, the nearest to what their insulation stands first, °C at the end of the step. */
	readonly conductors: readonly {
		readonly key: ItemKey;
		readonly name: string;
		readonly temperatureC: number;
		readonly limitC: number;
	}[];
	/** True where the step lasts longer than the equation holds: temperatures are then those after `HELD_S`. */
	readonly isBound: boolean;
	/** Loads that get nothing any more, and those that were dark before the step. */
	readonly dark: readonly { readonly key: ItemKey; readonly name: string }[];
}

export interface ShortOffer {
	readonly ok: true;
	readonly at: string;
	/** Of a conductor; null for a stud. */
	readonly end: ConductorEnd | null;
	readonly to: string;
	/** Where else it may go, by the terminal that stands for it. */
	readonly returns: readonly { readonly key: StudKey; readonly name: string }[];
	readonly currentA: number;
	/** Where that comes from. */
	readonly figure: FigureId;
	readonly openings: readonly (Omit<ShortDevice, 'currentA'> & {
		readonly earliestS: number;
		readonly latestS: number;
		readonly mayBeFirst: boolean;
		/** From memory or habit, not from a published curve. */
		readonly unverified: boolean;
		readonly source: string;
	})[];
	/** Device nearest to opening where none ever may; null where no device is in the way. */
	readonly nearest: ShortDevice | null;
	readonly withoutCurve: readonly ShortDevice[];
	readonly clears: boolean;
	readonly runs: Readonly<Record<Pace, readonly ShortStep[]>>;
}

export interface NoShort {
	readonly ok: false;
	readonly why: 'gone' | 'not-positive' | 'no-return' | 'not-fed';
}

/** What a step leaves out: a current nobody would measure, a conductor that stays as it is. */
const LEAST_A = 0.1;
const LEAST_K = 1;

export function shortOffer(diagram: Diagram, { item, end, to, shortOhm, condition }: ShortAsk): ShortOffer | NoShort {
	const study = studyOf(diagram);
	const { network, faults } = study;
	const places = placesOf(study, item);
	if (places.length === 0) return { ok: false, why: 'gone' };
	const positive = places.filter(({ node }) => faults.returnOf(node) !== null);
	if (positive.length === 0) {
		const isPositive = places.some(({ node }) => network.poles[node] === 'positive');
		return { ok: false, why: isPositive ? 'no-return' : 'not-positive' };
	}
	const chosen = positive.find((place) => place.end === end) ?? least(positive, ({ node }) => faults.short(node, condition)?.currentA ?? 0);
	const back = to === null ? undefined : network.nodeOf.get(to);
	const home = faults.returnOf(chosen.node)!;
	const names = nodeNames(study);
	const returns = returnsOf(study, chosen.node, home);
	const story = shortStory(network, diagram.conductors, {
		at: chosen.node,
		to: back ?? home,
		shortOhm,
		condition,
		startC: (id) => startC(diagram, id, condition)
	});
	const [first] = story.runs.middle;
	if (first!.currentA === 0) return { ok: false, why: 'not-fed' };

	const device = (index: number, currentA: number): ShortDevice => {
		const branch = network.branches[index]!;
		const { origin } = branch;
		if (origin.kind !== 'link') throw new Error('A device is a link of a part.');
		return { key: itemKey('part', origin.part), name: deviceName(study, origin), ratingA: branch.device!.ratingA, currentA };
	};
	const devices = (stretch: Stretch): ShortDevice[] =>
		[...stretch.deviceA]
			.filter(([, amps]) => amps >= LEAST_A)
			.map(([index, amps]) => device(index, amps))
			.sort((a, b) => b.currentA / b.ratingA - a.currentA / a.ratingA);
	const steps = (stretches: readonly Stretch[]): ShortStep[] =>
		stretches.map((stretch) => step(study, stretch, condition, devices, device));
	return {
		ok: true,
		at: chosen.name,
		end: chosen.end,
		to: names(back ?? home),
		returns,
		currentA: first!.currentA,
		figure: { of: 'short', at: chosen.key, to: back === undefined ? returns[0]!.key : to!, shortOhm, condition },
		openings: story.openings.map(({ index, earliestS, latestS, mayBeFirst }) => {
			const { family } = network.branches[index]!.device!;
			const times = fuseTimes(family!);
			return { ...device(index, 0), earliestS, latestS, mayBeFirst, unverified: isUnverified(times), source: times.source };
		}),
		nearest: devices(first!)[0] ?? null,
		withoutCurve: story.withoutCurve.map((index) => device(index, first!.deviceA.get(index) ?? 0)),
		clears: story.clears,
		runs: { soonest: steps(story.runs.soonest), middle: steps(story.runs.middle), latest: steps(story.runs.latest) }
	};
}

interface Place {
	readonly node: NodeIndex;
	readonly key: StudKey;
	readonly name: string;
	readonly end: ConductorEnd | null;
}

function placesOf(study: Study, item: ItemKey): Place[] {
	const { network, diagram } = study;
	const { kind, id } = parseItemKey(item);
	if (kind === 'stud') {
		const node = network.nodeOf.get(id);
		return node === undefined ? [] : [{ node, key: id, name: study.studName(id), end: null }];
	}
	const ends = network.nodeOfEnd.get(id);
	const conductor = diagram.conductors[id];
	if (kind !== 'conductor' || !ends || !conductor) return [];
	return (['from', 'to'] as const).map((end) => ({
		node: ends[end],
		key: studKey(conductor[end]),
		name: `${study.conductorName(id)} at ${study.studName(studKey(conductor[end]))}`,
		end
	}));
}

const least = <Item>(items: readonly Item[], of: (item: Item) => number): Item =>
	items.reduce((best, item) => (of(item) < of(best) ? item : best));

/** Before the short: as warm as the air around it, or as warm as its insulation may be in service. */
function startC(diagram: Diagram, id: string, condition: Condition): number {
	const conductor = diagram.conductors[id]!;
	return condition === 'least' ? conductor.insulationC : surroundingsOf(diagram, conductor).ambientC;
}

/** Every place of the return in the same system, the circuit's own first. */
function returnsOf(study: Study, at: NodeIndex, home: NodeIndex): ShortOffer['returns'] {
	const { network, faults } = study;
	const names = nodeNames(study);
	const seen = new Set<NodeIndex>();
	const found: { readonly key: StudKey; readonly name: string; readonly node: NodeIndex }[] = [];
	for (const [key, node] of network.nodeOf) {
		if (seen.has(node) || network.poles[node] !== 'negative') continue;
		const isChassis = key.startsWith('@@');
		if (!isChassis && key.includes('.@')) continue;
		if (faults.shortTo(at, node, 'greatest').currentA === 0) continue;
		seen.add(node);
		found.push({ key, node, name: names(node) });
	}
	const rank = ({ key, node }: (typeof found)[number]): number => (node === home ? 0 : key.startsWith('@@') ? 1 : 2);
	return found.sort((a, b) => rank(a) - rank(b) || a.name.localeCompare(b.name)).map(({ key, name }) => ({ key, name }));
}

function step(
	study: Study,
	stretch: Stretch,
	condition: Condition,
	devices: (stretch: Stretch) => ShortDevice[],
	device: (index: number, currentA: number) => ShortDevice
): ShortStep {
	const { diagram, network } = study;
	const { fromS, toS, currentA, opens, conductorC, dark } = stretch;
	const share = ({ temperatureC, limitC }: ShortStep['conductors'][number]): number => temperatureC / limitC;
	return {
		fromS,
		toS,
		currentA,
		devices: devices(stretch),
		opens: opens === null ? null : device(opens, 0),
		conductors: [...conductorC]
			.filter(([id, temperatureC]) => temperatureC - startC(diagram, id, condition) >= LEAST_K)
			.map(([id, temperatureC]) => ({
				key: itemKey('conductor', id),
				name: study.conductorName(id),
				temperatureC,
				limitC: shortCircuitEndC(diagram.conductors[id]!.insulationC)
			}))
			.sort((a, b) => share(b) - share(a)),
		isBound: toS - fromS > HELD_S,
		dark: [...new Set(dark.map((index) => network.loads[index]!.part))].map((id) => ({
			key: itemKey('part', id),
			name: partName(study.part(id))
		}))
	};
}
