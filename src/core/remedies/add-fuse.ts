import {
	addConductor,
	addPart,
	freshId,
	mountBlock,
	nextLabel,
	reconnectConductor,
	studKey,
	terminalRef,
	type Command,
	type ConductorEnd,
	type ConductorId,
	type StudKey
} from '#core/diagram';
import { outward } from '#core/geometry';
import { placedTerminal } from '#core/layout';
import { overcurrentFaults, type Finding, type OvercurrentFault, type Study } from '#core/rules';
import { fuseFamily, type FuseFamilyId } from '#core/tables';
import { ampsText, metresText } from '#core/units';
import type { Proposal, RemedyKind } from './types.ts';

/** From the source to a fuse in the run, metres: within what every profile allows. */
const TAIL_M = 0.1;
/** Between a stud and a fuse drawn beside it, mm. */
const BESIDE_MM = 110;

/** Plate of a single block: common practice, no source. */
const USUAL_PLATE_A = 200;

const INLINE: readonly FuseFamilyId[] = ['blade-regular', 'strip-sf51', 'class-t', 'cylindrical'];

/** A fuse where the conductor begins: in a block on the source's stud, or in the run close to it. */
export const addFuse: RemedyKind = {
	rules: ['unprotected-conductor', 'two-source-conductor', 'protection-too-far', 'oversized-protection'],

	*propose(study, finding) {
		const fault = overcurrentFaults(study).find(({ view }) => view.id === finding.subjects[0]?.id);
		const start = fault && startOf(study, fault, finding);
		if (!fault || !start || standsBehind(fault)) return;
		yield* onStud(study, fault, start);
		for (const family of INLINE) yield* inRun(study, fault, start, family);
	}
};

/** The fuse that is too large is the one its end sits on: a second behind it would be no better than a smaller one in its place. */
const standsBehind = ({ kind, view, end, letThrough }: OvercurrentFault): boolean =>
	kind === 'oversized' && letThrough.limitedBy.length === 1 && letThrough.limitedBy[0]!.part === view.conductor[end].part;

interface Start {
	readonly conductor: ConductorId;
	readonly end: ConductorEnd;
	readonly stud: StudKey;
}

/** The conductor at the origin of the unprotected run, and its end there. */
function startOf({ diagram }: Study, { run, view, end }: OvercurrentFault, { rule }: Finding): Start | null {
	const first = rule === 'oversized-protection' ? undefined : run.way[0];
	if (first === undefined) return { conductor: view.id, end, stud: studKey(view.conductor[end]) };
	const at = (['from', 'to'] as const).find((side) => studKey(diagram.conductors[first]![side]) === run.origin);
	return at ? { conductor: first, end: at, stud: run.origin } : null;
}

/** The smallest rating that carries the load with room to spare, or else the largest the conductor allows; null where that would open. */
function ratingFor(study: Study, { limit }: OvercurrentFault, { conductor }: Start, family: FuseFamilyId): number | null {
	const allowed = fuseFamily(family).ratingsA.value.filter((ratingA) => ratingA <= limit.currentA);
	const { currentA } = study.conductor(conductor).continuous;
	const largest = allowed.at(-1) ?? 0;
	return allowed.find((ratingA) => ratingA >= currentA / study.profile.fuseLoadShare.value) ?? (largest > currentA ? largest : null);
}

function* onStud(study: Study, fault: OvercurrentFault, start: Start): Generator<Proposal> {
	const { diagram } = study;
	const host = placedTerminal(diagram, terminalRef(start.stud));
	const fuseA = ratingFor(study, fault, start, 'cube');
	if (!host || fuseA === null || host.terminal.kind !== 'stud' || host.terminal.acceptsBlock === false || host.terminal.mountingPlate)
		return;
	const id = freshId(diagram.parts, 'F');
	const label = nextLabel(diagram, 'F');
	yield {
		title: `Mount fuse block ${label} with ${ampsText(fuseA)} on ${study.studName(start.stud)} for ${study.conductorName(start.conductor)}`,
		commands: [
			addPart({
				id,
				part: {
					kind: 'fuse-block',
					label,
					at: host.at,
					params: { fuseA, plateHole: host.terminal.thread, plateRatedA: Math.max(USUAL_PLATE_A, fuseA) }
				}
			}),
			mountBlock({ block: id, on: terminalRef(start.stud) }),
			reconnectConductor({ conductor: start.conductor, end: start.end, on: { part: id, terminal: 'post' } })
		]
	};
}

function* inRun(study: Study, fault: OvercurrentFault, start: Start, family: FuseFamilyId): Generator<Proposal> {
	const { diagram } = study;
	const host = placedTerminal(diagram, terminalRef(start.stud));
	const fuseA = ratingFor(study, fault, start, family);
	if (!host || fuseA === null) return;
	const id = freshId(diagram.parts, 'F');
	const label = nextLabel(diagram, 'F');
	const { gauge, insulationC, environment, sheathed } = diagram.conductors[start.conductor]!;
	const { x, y } = outward(host.side);
	const commands: Command[] = [
		addPart({
			id,
			part: { kind: 'inline-fuse', label, at: { x: host.at.x + x * BESIDE_MM, y: host.at.y + y * BESIDE_MM }, params: { family, fuseA } }
		}),
		reconnectConductor({ conductor: start.conductor, end: start.end, on: { part: id, terminal: 'out' } }),
		addConductor({
			id: freshId(diagram.conductors, 'W'),
			conductor: {
				label: nextLabel(diagram, 'W'),
				from: terminalRef(start.stud),
				to: { part: id, terminal: 'in' },
				gauge,
				insulationC,
				environment,
				sheathed,
				lengthM: TAIL_M
			}
		})
	];
	yield {
		title: `Put in-line fuse ${label} (${fuseFamily(family).name}, ${ampsText(fuseA)}) ${metresText(TAIL_M)} from ${study.studName(start.stud)} into ${study.conductorName(start.conductor)}`,
		commands,
		group: 'in-line'
	};
}
