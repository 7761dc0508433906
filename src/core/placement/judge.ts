/** What a plan costs: weights are common practice, no source. */
import { areaMm2 } from '#core/conductors';
import { studKey, terminalRef, type Diagram, type PartId, type StudKey } from '#core/diagram';
import { describe } from '#core/parts';
import { difference, findingsOf, studyOf } from '#core/remedies';
import { stackCurrents, type Finding, type Study } from '#core/rules';
import { jointsOf, landings, obstaclesOf, stackOf, underUsualCover } from '#core/studs';
import { ampsText } from '#core/units';
import { barCases, barFigures, barOf } from '#core/bars';
import { partText, studText } from './names.ts';
import { freePositions } from './places.ts';
import type { FullBusRequest, PlacementCost, PlacementFigures } from './request.ts';
import type { Sketch } from './sketch.ts';

const WEIGHT = {
	warning: 10,
	/** For a bar loaded to its rating. */
	segment: 4,
	jointW: 1,
	dropPercent: 2,
	piece: 0.5,
	moved: 1,
	newLug: 2,
	opened: 1,
	/** For each circuit in a block on a stud that others hang on. */
	shared: 1,
	/** For no place left at all. */
	growth: 3,
	risk: 2,
	/** Risks where it shakes, as on boats and vehicles. */
	moving: 2
};

/** A lead thicker than 6 AWG levers on a post: common practice, no source. */
const LIGHT_MM2 = areaMm2({ system: 'awg', size: '6' });

export interface Judgement {
	readonly added: readonly Finding[];
	readonly cleared: readonly Finding[];
	readonly disturbed: readonly string[];
	readonly notes: readonly string[];
	readonly risks: readonly string[];
	readonly figures: PlacementFigures;
	/** All but new warnings, which are known only once all options are. */
	readonly costs: readonly PlacementCost[];
}

export function judge(before: Diagram, sketch: Sketch, { bus, circuits, built }: FullBusRequest): Judgement {
	const { diagram, buys, moves } = sketch;
	const { added, cleared } = difference(findingsOf(before), findingsOf(diagram));
	const [was, is] = [studyOf(before), studyOf(diagram)];
	const bar = barOf(diagram, bus)!;
	const { greatestA } = barFigures(barCases(is, bus, bar), bar.segmentOhm);
	const figures: PlacementFigures = {
		greatestA,
		ratedA: bar.ratedA,
		jointHeatW: Math.max(0, jointHeat(is) - jointHeat(was)),
		dropPercent: worstDrop(was, is),
		...free(before, diagram, bus)
	};
	const opened = openedStuds(before, diagram, bus);
	const covers = coverNotes(was, is, bus);
	const risks = [
		...sketch.risks,
		...(built && (moves.length > 0 || opened.length > 0) ? ['Connections that work today are opened.'] : []),
		...new Set(covers.filter(({ closedBefore }) => closedBefore).map(({ stud }) => `${stud} would not close under a usual cover.`)),
		...leversOn(before, diagram)
	];

	const shared = sharedStuds(before, diagram);
	const free_ = figures.freePositions + figures.freeEnds;
	const weight = WEIGHT.risk * (diagram.system.craft === 'cabin' ? 1 : WEIGHT.moving);
	const pieces = buys.reduce((sum, buy) => sum + buy.pieces - (built ? 0 : (buy.instead ?? 0)), 0);
	const newLugs = moves.filter(({ newLug }) => newLug).length;
	const costs: PlacementCost[] = [
		{ what: `bar ${ampsText(greatestA)}`, cost: bar.ratedA === null ? 0 : (WEIGHT.segment * greatestA) / bar.ratedA },
		{ what: 'heat in joints', cost: WEIGHT.jointW * figures.jointHeatW },
		{ what: 'volts lost by others', cost: WEIGHT.dropPercent * figures.dropPercent },
		{ what: counted(pieces, 'piece to buy', 'pieces to buy'), cost: WEIGHT.piece * pieces },
		{
			what: 'connections disturbed',
			cost: built ? WEIGHT.moved * moves.length + WEIGHT.newLug * newLugs + WEIGHT.opened * opened.length : 0
		},
		{ what: 'a stud shared with what feeds the bus', cost: WEIGHT.shared * shared },
		{ what: 'little room left', cost: WEIGHT.growth * (1 - Math.min(1, free_ / (circuits.length + 1))) },
		{ what: counted(risks.length, 'risk', 'risks'), cost: weight * risks.length }
	];
	return {
		added,
		cleared,
		disturbed: [...moves.map(({ text }) => text), ...opened.map((stud) => `${studText(diagram, stud)} is opened; what is on it stays`)],
		notes: covers.map(({ text }) => text),
		risks,
		figures,
		costs: costs.filter(({ cost }) => cost > HAIR).toSorted((a, b) => b.cost - a.cost)
	};
}

const HAIR = 0.005;

export const warningCost = (count: number): PlacementCost[] =>
	count === 0 ? [] : [{ what: counted(count, 'new warning', 'new warnings'), cost: WEIGHT.warning * count }];

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

interface CoverNote {
	readonly stud: string;
	readonly text: string;
	readonly closedBefore: boolean;
}

/** Studs of the bus that hold something else than before and would not close under a usual cover. */
function coverNotes(was: Study, is: Study, part: PartId): CoverNote[] {
	const problems = (study: Study, key: StudKey) => {
		const stack = study.stack(key);
		return stack
			? obstaclesOf(study.diagram, { ...stack, terminal: underUsualCover(stack.terminal) }).filter(
					({ kind }) => kind === 'cover-does-not-close' || kind === 'cable-too-thick'
				)
			: [];
	};
	return is.stacks
		.filter(({ key, terminal }) => terminalRef(key).part === part && terminal.fuseInStack === undefined && terminal.coverHeightMm === null)
		.filter(({ key, sentence }) => was.stack(key)?.sentence !== sentence && isOpenStud(is, part, key))
		.flatMap(({ key }) =>
			problems(is, key).map(({ message }) => ({
				stud: is.studName(key),
				text: `${is.studName(key)}, under a usual cover: ${message}`,
				closedBefore: problems(was, key).length === 0
			}))
		)
		.filter((note, index, all) => all.findIndex(({ text }) => text === note.text) === index);
}

const isOpenStud = ({ diagram }: Study, part: PartId, key: StudKey): boolean =>
	barOf(diagram, part)!.slots.some(({ terminal, fused }) => !fused && key === studKey({ part, terminal }));

/** Studs whose nut has to come off although nothing on them moves. */
function openedStuds(before: Diagram, after: Diagram, bus: PartId): StudKey[] {
	const [was, is] = [landings(before), landings(after)];
	const name = (items: readonly unknown[] = []) => items.map((item) => JSON.stringify(item));
	return [...is.keys()].filter((key) => {
		const [old, now] = [name(was.get(key)), name(is.get(key))];
		const stays = old.filter((item) => now.includes(item));
		const isStud = stackOf(after, key)?.terminal.kind === 'stud';
		return isStud && stays.length > 0 && now.length > stays.length && (terminalRef(key).part === bus || stays.length === old.length);
	});
}

/** Circuits in new blocks that sit with a lug on one stud: work on it puts out all. */
function sharedStuds(before: Diagram, after: Diagram): number {
	const landed = landings(after);
	return Object.entries(after.mounts)
		.filter(([block, host]) => !Object.hasOwn(before.mounts, block) && landed.get(studKey(host))!.some(({ kind }) => kind === 'lug'))
		.reduce((sum, [block]) => sum + describe(after.parts[block]!).links.filter(({ kind }) => kind === 'protective').length, 0);
}

/** Thick leads on the posts of blocks that were not there. */
function leversOn(before: Diagram, after: Diagram): string[] {
	if (after.system.craft === 'cabin') return [];
	const landed = landings(after);
	return Object.keys(after.mounts)
		.filter((block) => !Object.hasOwn(before.mounts, block))
		.flatMap((block) =>
			describe(after.parts[block]!).terminals.flatMap(({ id }) =>
				(landed.get(studKey({ part: block, terminal: id })) ?? []).flatMap((item) =>
					item.kind === 'lug' && areaMm2(after.conductors[item.conductor]!.gauge) > LIGHT_MM2 * 1.01
						? [`A thick lead hangs on the post of ${partText(after, block)}, which shakes with it.`]
						: []
				)
			)
		);
}

/** Every joint on a stud, each in its hottest case, watts. */
const jointHeat = (study: Study): number =>
	study.stacks.flatMap((stack) => jointsOf(stack, stackCurrents(study, stack))).reduce((sum, { heatW }) => sum + heatW, 0);

/** The most any load loses more than before in a case that is in both, percent of nominal voltage. */
function worstDrop(was: Study, is: Study): number {
	let worst = 0;
	for (const { id, point } of was.cases) {
		const other = is.cases.find((result) => result.id === id)?.point;
		if (!other || point.status !== 'solved' || other.status !== 'solved') continue;
		for (const load of was.network.loads) {
			const now = is.network.loads.find(({ part, link }) => part === load.part && link === load.link);
			if (now) worst = Math.max(worst, point.loadV[load.index]! - other.loadV[now.index]!);
		}
	}
	return (100 * worst) / is.diagram.system.nominalV;
}

/** On the bus, and on buses that came with the change. */
function free(before: Diagram, diagram: Diagram, bus: PartId): Pick<PlacementFigures, 'freePositions' | 'freeEnds'> {
	const landed = landings(diagram);
	const isEmpty = (part: PartId, terminal: string) => !landed.has(studKey({ part, terminal }));
	const added = Object.keys(diagram.parts).filter((part) => !Object.hasOwn(before.parts, part));
	const bars = [bus, ...added].flatMap((part) => {
		const bar = barOf(diagram, part);
		return bar?.slots.some(({ fused }) => fused) ? [{ part, bar }] : [];
	});
	return {
		freePositions: bars.reduce((sum, { part }) => sum + freePositions(diagram, part).length, 0),
		freeEnds: bars.reduce(
			(sum, { part, bar }) => sum + bar.slots.filter(({ terminal, fused }) => !fused && isEmpty(part, terminal)).length,
			0
		)
	};
}
