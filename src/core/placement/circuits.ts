/** Circuits as they stand on a bus, and new ones sized and drawn. */
import { areaMm2, compareGauges, gaugesOf, gaugeText, resistanceOhm } from '#core/conductors';
import {
	addConductor,
	addPart,
	freshId,
	nextLabel,
	setLevel,
	setParams,
	studKey,
	type ConductorEnd,
	type ConductorId,
	type Diagram,
	type Gauge,
	type Param,
	type Part,
	type PartId,
	type TerminalRef
} from '#core/diagram';
import type { Point } from '#core/geometry';
import { partBox } from '#core/layout';
import { describe } from '#core/parts';
import { greatestDevice, profileOf } from '#core/profiles';
import { landings } from '#core/studs';
import { fuseFamily, STANDARD_RATINGS, type FuseFamilyId } from '#core/tables';
import { ampsText, metresText } from '#core/units';
import { barOf } from '#core/bars';
import { fuseBehind } from './holders.ts';
import { partText, studText } from './names.ts';
import type { NewCircuit } from './request.ts';
import { Refused, type Sketch } from './sketch.ts';

/** A circuit behind a fuse of the bus. */
export interface OldCircuit {
	readonly terminal: string;
	readonly conductor: ConductorId;
	readonly end: ConductorEnd;
	readonly fuseA: number;
	readonly device: PartId;
	readonly name: string;
}

/** Circuits with one conductor behind a fuse, in the order of the positions. */
export function circuitsOn(diagram: Diagram, bus: PartId): OldCircuit[] {
	const bar = barOf(diagram, bus);
	const landed = landings(diagram);
	return (bar?.slots ?? []).flatMap(({ terminal, fused }): OldCircuit[] => {
		const lugs = landed.get(studKey({ part: bus, terminal })) ?? [];
		const device = fused ? fuseBehind(diagram.parts[bus]!, terminal) : null;
		const [lug] = lugs;
		if (!device || lugs.length !== 1 || lug?.kind !== 'lug') return [];
		const far = diagram.conductors[lug.conductor]![lug.end === 'from' ? 'to' : 'from'];
		const name = diagram.parts[far.part]?.label.trim() || far.part;
		return [{ terminal, conductor: lug.conductor, end: lug.end, fuseA: device.ratingA, device: far.part, name }];
	});
}

/** The smallest rating of a family that carries the circuit, `grouped` among fuses that warm it; at least what its maker asks for. */
export function fuseFor(
	diagram: Diagram,
	circuit: Pick<NewCircuit, 'currentA' | 'continuous' | 'fuseA'>,
	family: FuseFamilyId | null,
	grouped = false
): number {
	const { fuseLoadShare, fuseGroupedShare } = profileOf(diagram);
	const share = grouped ? fuseGroupedShare.value : fuseLoadShare.value;
	const neededA = Math.max(
		circuit.fuseA ?? 0,
		circuit.fuseA !== undefined && !grouped ? 0 : circuit.currentA / (circuit.continuous ? share : 1)
	);
	const ladder = family === null ? STANDARD_RATINGS.value : fuseFamily(family).ratingsA.value;
	const ratingA = ladder.find((rating) => rating >= neededA * (1 - 1e-9));
	if (ratingA === undefined)
		throw new Refused(`A ${family === null ? 'fuse' : fuseFamily(family).name} is not made for ${ampsText(neededA)}.`);
	return ratingA;
}

/** Of the allowed drop, the share the circuit's own conductors may take; joints, fuses and the way to the bus take the rest. */
const OWN_SHARE = 0.75;

/** The thinnest size that suits its fuse and its drop. */
export function gaugeFor(
	diagram: Diagram,
	{ currentA, lengthM, critical }: Pick<NewCircuit, 'currentA' | 'lengthM' | 'critical'>,
	fuseA: number
): Gauge {
	const profile = profileOf(diagram);
	const { nominalV } = diagram.system;
	const percent = (critical ? profile.drop.criticalPercent : profile.drop.ordinaryWarnPercent).value;
	const conditions = { insulationC: 105, environment: 'outside', bundleCount: 1 } as const;
	const gauge = gaugesOf('awg').find((gauge) => {
		const ampacity = profile.ampacity({ ...conditions, gauge }, nominalV, diagram.ambient);
		if (areaMm2(gauge) < profile.smallestSeparateMm2.value) return false;
		const dropV = 2 * currentA * resistanceOhm({ gauge }, lengthM);
		return (
			greatestDevice(profile, ampacity, nominalV).currentA >= fuseA &&
			ampacity.currentA >= currentA / 0.9 &&
			dropV <= (OWN_SHARE * percent * nominalV) / 100
		);
	});
	if (!gauge) throw new Refused(`No conductor carries ${ampsText(currentA)} over ${metresText(lengthM)}.`);
	return gauge;
}

/** A circuit to be drawn, with the same ids and labels in whatever order it is drawn among others. */
export interface Newcomer {
	readonly kind: 'new';
	readonly circuit: NewCircuit;
	readonly id: PartId;
	readonly plusId: ConductorId;
	readonly minusId: ConductorId;
	/** Of both conductors, without their signs: "C5". */
	readonly label: string;
	/** Where its device is drawn, from the bus, mm. */
	readonly beside: Point;
}

export function newcomersOf(diagram: Diagram, circuits: readonly NewCircuit[]): Newcomer[] {
	const parts: Record<PartId, unknown> = { ...diagram.parts };
	const conductors: Record<ConductorId, unknown> = { ...diagram.conductors };
	const take = (record: Record<string, unknown>, prefix: string): string => {
		const id = freshId(record, prefix);
		record[id] = true;
		return id;
	};
	const [, prefix = 'C', first = '1'] = /^(\D*)(\d+)$/u.exec(nextLabel(diagram, 'C')) ?? [];
	return circuits.map((circuit, index) => ({
		kind: 'new',
		circuit,
		id: take(parts, 'N'),
		plusId: take(conductors, 'N'),
		minusId: take(conductors, 'N'),
		label: `${prefix}${Number(first) + index}`,
		beside: { x: BESIDE_MM.x + index * STEP_MM.x, y: BESIDE_MM.y + index * STEP_MM.y }
	}));
}

const BESIDE_MM = { x: 300, y: -200 };
const STEP_MM = { x: 160, y: 0 };

/** Draws the device and both conductors between it and its landing. */
export function drawCircuit(
	sketch: Sketch,
	comer: Newcomer,
	fuseA: number,
	plus: TerminalRef,
	minus: TerminalRef,
	plusM = comer.circuit.lengthM
): void {
	const { diagram } = sketch;
	const { circuit, id, label, plusId, minusId } = comer;
	const gauge = gaugeFor(diagram, circuit, fuseA);
	const part: Pick<Part, 'kind' | 'params'> = circuit.source
		? { kind: 'solar-controller', params: { maxA: circuit.currentA } }
		: { kind: 'load', params: { draw: circuit.currentA, critical: circuit.critical, connection: 'studs' } };
	sketch.run(addPart({ id, part: { ...part, label: circuit.name, at: freeAt(diagram, hostAt(diagram, plus), comer.beside) } }));
	const draw = (id: ConductorId, sign: string, lengthM: number, from: TerminalRef, to: TerminalRef) =>
		sketch.run(addConductor({ id, conductor: { label: `${label}${sign}`, from, to, gauge, lengthM } }));
	draw(plusId, '+', plusM, plus, { part: id, terminal: 'pos' });
	draw(minusId, '−', circuit.lengthM, { part: id, terminal: 'neg' }, minus);
	for (const caseId of circuit.offIn ?? []) sketch.run(setLevel({ case: caseId, part: id, level: 0 }));
	sketch.steps.push(
		`${circuit.name}: ${ampsText(fuseA)} at ${studText(sketch.diagram, plus)}, ${gaugeText(gauge)}, return to ${studText(sketch.diagram, minus)}.`
	);
	sketch.buys.push({ text: `${metresText(plusM + circuit.lengthM)} of ${gaugeText(gauge)} with four lugs for ${circuit.name}`, pieces: 4 });
}

/** Of the part a block sits on, or of the part itself. */
const hostAt = ({ parts, mounts }: Diagram, { part }: TerminalRef): Point => parts[mounts[part]?.part ?? part]!.at;

/** As near to where it is wanted as nothing is drawn yet. */
export function freeAt(diagram: Diagram, bus: Point, beside: Point): Point {
	const bodies = Object.keys(diagram.parts).flatMap((id) => partBox(diagram, id) ?? []);
	const isFree = (at: Point) =>
		bodies.every(
			(box) => at.x + ROOM_MM.x < box.minX || at.x - ROOM_MM.x > box.maxX || at.y + ROOM_MM.y < box.minY || at.y - ROOM_MM.y > box.maxY
		);
	const wanted = { x: Math.round(bus.x + beside.x), y: Math.round(bus.y + beside.y) };
	return AROUND.map(({ x, y }) => ({ x: wanted.x + x, y: wanted.y + y })).find(isFree) ?? wanted;
}

/** Half of what a new device and its conductors take, mm. */
const ROOM_MM = { x: 75, y: 75 };
const STEP = 50;
const FAR = 30;

/** Offsets in a wide square, nearest first. */
const AROUND: readonly Point[] = Array.from({ length: (2 * FAR + 1) ** 2 }, (_, index) => ({
	x: ((index % (2 * FAR + 1)) - FAR) * STEP,
	y: (Math.floor(index / (2 * FAR + 1)) - FAR) * STEP
})).toSorted((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));

/** The emptiest stud for a return on the bus that most returns of these circuits land on; that bus gets longer where it is full. */
export function returnStud(sketch: Sketch, bus: PartId): TerminalRef {
	const found = freeReturn(sketch.diagram, bus);
	if (found) return found;
	lengthenReturns(sketch, bus);
	const added = freeReturn(sketch.diagram, bus);
	if (!added) throw new Refused('There is no stud left for another return, and no negative bus that is made longer.');
	return added;
}

type ReturnStud = TerminalRef & { readonly maxTerminals: number };

/** Studs of negative buses, the busiest bus first. */
function returnStuds(diagram: Diagram, bus: PartId): ReturnStud[] {
	const uses = new Map<PartId, number>();
	for (const { from, to } of Object.values(diagram.conductors))
		for (const { part } of [from, to]) uses.set(part, (uses.get(part) ?? 0) + 1);
	return Object.entries(diagram.parts)
		.flatMap(([part, value]) => {
			const { links, terminals } = describe(value);
			if (part === bus || links.length === 0 || links.some(({ kind }) => kind !== 'segment')) return [];
			return terminals
				.filter(({ role, kind }) => role === 'negative' && kind === 'stud')
				.map(({ id, maxTerminals }) => ({ part, terminal: id, maxTerminals }));
		})
		.sort((a, b) => (uses.get(b.part) ?? 0) - (uses.get(a.part) ?? 0));
}

function freeReturn(diagram: Diagram, bus: PartId): TerminalRef | null {
	const landed = landings(diagram);
	const studs = returnStuds(diagram, bus);
	const rank = new Map([...new Set(studs.map(({ part }) => part))].map((part, index) => [part, index]));
	const load = (ref: TerminalRef) => landed.get(studKey(ref))?.length ?? 0;
	const thickness = (ref: TerminalRef) =>
		Math.max(
			0,
			...(landed.get(studKey(ref)) ?? []).map((item) =>
				item.kind === 'lug' ? compareGauges(diagram.conductors[item.conductor]!.gauge, { system: 'awg', size: '18' }) : 0
			)
		);
	const [best] = studs
		.filter((stud) => load(stud) < stud.maxTerminals)
		.sort((a, b) => rank.get(a.part)! - rank.get(b.part)! || load(a) - load(b) || thickness(a) - thickness(b));
	return best ? { part: best.part, terminal: best.terminal } : null;
}

/** Full returns come first: often they run out one circuit earlier than the positive side. */
function lengthenReturns(sketch: Sketch, bus: PartId): void {
	const studCount = (part: Part) => describe(part).terminals.filter(({ role, kind }) => role === 'negative' && kind === 'stud').length;
	for (const id of new Set(returnStuds(sketch.diagram, bus).map(({ part }) => part))) {
		const part = sketch.diagram.parts[id]!;
		for (const [name, value] of Object.entries(describe(part).params as Record<string, Param>)) {
			if (typeof value !== 'number' || !Number.isInteger(value)) continue;
			const next = { ...part, params: { ...part.params, [name]: value + 1 } };
			if (describe(next).problems.length > 0 || studCount(next) !== studCount(part) + 1) continue;
			sketch.run(setParams({ parts: [id], params: { [name]: value + 1 } }));
			sketch.steps.push(`${partText(sketch.diagram, id)} first gets a stud more: its studs are full.`);
			sketch.buys.push({
				text: `a negative bus with ${value + 1} studs in place of ${partText(sketch.diagram, id)}`,
				pieces: 2,
				instead: 1
			});
			return;
		}
	}
}
