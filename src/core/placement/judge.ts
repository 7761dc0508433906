/** What a plan costs: weights are common practice, no source. */
import { studKey, type Diagram } from '#core/diagram';
import { difference, findingsOf, studyOf } from '#core/remedies';
import { stackCurrents, type Finding, type Study } from '#core/rules';
import { jointsOf, landings, obstaclesOf, underUsualCover } from '#core/studs';
import { barCases, barFigures, barOf } from './bar.ts';
import { fuseBehind } from './holders.ts';
import type { FullBusRequest, PlacementFigures } from './request.ts';
import type { Sketch } from './sketch.ts';

const WEIGHT = { warning: 10, segment: 4, jointW: 1, dropPercent: 2, part: 0.5, disturbed: 3, growth: 3, liveWork: 2, moving: 2 };

export interface Judgement {
	readonly added: readonly Finding[];
	readonly cleared: readonly Finding[];
	readonly notes: readonly string[];
	readonly figures: PlacementFigures;
	readonly cost: number;
}

export function judge(before: Diagram, { diagram, buys, disturbed }: Sketch, { bus, circuits, built }: FullBusRequest): Judgement {
	const { added, cleared } = difference(findingsOf(before), findingsOf(diagram));
	const [was, is] = [studyOf(before), studyOf(diagram)];
	const bar = barOf(diagram, bus)!;
	const { greatestA } = barFigures(barCases(is, bus, bar), bar.segmentOhm);
	const figures: PlacementFigures = {
		greatestA,
		ratedA: bar.ratedA,
		jointHeatW: Math.max(0, jointHeat(is, bus) - jointHeat(was, bus)),
		dropPercent: worstDrop(was, is),
		...free(diagram, bus)
	};
	const warnings = added.filter(({ severity }) => severity === 'warning').length;
	const craft = diagram.system.craft === 'cabin' ? 1 : WEIGHT.moving;
	const cost =
		WEIGHT.warning * warnings +
		WEIGHT.segment * (bar.ratedA === null ? 0 : greatestA / bar.ratedA) +
		WEIGHT.jointW * figures.jointHeatW +
		WEIGHT.dropPercent * figures.dropPercent +
		WEIGHT.part * buys.length +
		(built ? WEIGHT.disturbed * disturbed.length + (disturbed.length > 0 ? WEIGHT.liveWork * craft : 0) : 0) +
		WEIGHT.growth * (1 - Math.min(1, (figures.freePositions + figures.freeEnds) / (circuits.length + 1)));
	return { added, cleared, notes: coverNotes(was, is, bus), figures, cost };
}

/** Studs of the bus that hold something else than before and would not close under a usual cover. */
const coverNotes = (was: Study, is: Study, part: string): string[] =>
	is.stacks
		.filter(({ key, terminal }) => key.startsWith(`${part}.`) && terminal.fuseInStack === undefined && terminal.coverHeightMm === null)
		.filter(({ key, sentence }) => was.stack(key)?.sentence !== sentence && terminalIsOpen(is, part, key))
		.flatMap((stack) =>
			obstaclesOf(is.diagram, { ...stack, terminal: underUsualCover(stack.terminal) })
				.filter(({ kind }) => kind === 'cover-does-not-close' || kind === 'cable-too-thick')
				.map(({ message }) => `${is.studName(stack.key)}, under a usual cover: ${message}`)
		);

const terminalIsOpen = ({ diagram }: Study, part: string, key: string): boolean =>
	barOf(diagram, part)!.slots.some(({ terminal, fused }) => !fused && key === studKey({ part, terminal }));

/** Joints on the part's own studs, each in its hottest case, watts. */
const jointHeat = (study: Study, part: string): number =>
	study.stacks
		.filter(({ key }) => key.startsWith(`${part}.`))
		.flatMap((stack) => jointsOf(stack, stackCurrents(study, stack)))
		.reduce((sum, { heatW }) => sum + heatW, 0);

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

function free(diagram: Diagram, bus: string): Pick<PlacementFigures, 'freePositions' | 'freeEnds'> {
	const landed = landings(diagram);
	const slots = barOf(diagram, bus)!.slots.filter(({ terminal }) => !landed.has(studKey({ part: bus, terminal })));
	return {
		freePositions: slots.filter(({ terminal, fused }) => fused && !fuseBehind(diagram.parts[bus]!, terminal)).length,
		freeEnds: slots.filter(({ fused }) => !fused).length
	};
}
