/** Circuits as they stand on a bus, and new ones sized and drawn. */
import { areaMm2, compareGauges, gaugesOf, gaugeText, resistanceOhm } from '#core/conductors';
import {
	addConductor,
	addPart,
	freshId,
	nextLabel,
	setLevel,
	studKey,
	type ConductorEnd,
	type ConductorId,
	type Diagram,
	type Gauge,
	type Part,
	type PartId,
	type TerminalRef
} from '#core/diagram';
import { describe } from '#core/parts';
import { greatestDevice, profileOf } from '#core/profiles';
import { landings } from '#core/studs';
import { fuseFamily, STANDARD_RATINGS, type FuseFamilyId } from '#core/tables';
import { ampsText } from '#core/units';
import { barOf } from './bar.ts';
import { fuseBehind } from './holders.ts';
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

/** The smallest rating of a family that carries the circuit; at least what its maker asks for. */
export function fuseFor(
	diagram: Diagram,
	circuit: Pick<NewCircuit, 'currentA' | 'continuous' | 'fuseA'>,
	family: FuseFamilyId | null
): number {
	const { fuseLoadShare } = profileOf(diagram);
	const neededA = circuit.fuseA ?? circuit.currentA / (circuit.continuous ? fuseLoadShare.value : 1);
	const ladder = family === null ? STANDARD_RATINGS.value : fuseFamily(family).ratingsA.value;
	const ratingA = ladder.find((rating) => rating >= neededA * (1 - 1e-9));
	if (ratingA === undefined)
		throw new Refused(`A ${family === null ? 'fuse' : fuseFamily(family).name} is not made for ${ampsText(neededA)}.`);
	return ratingA;
}

/** Of the allowed drop, the share the circuit's own conductors may take; joints, fuses and the way to the bus take the rest. */
const OWN_SHARE = 0.75;

/** The thinnest size that suits its fuse and its drop. */
function gaugeFor(diagram: Diagram, { currentA, lengthM, critical }: NewCircuit, fuseA: number): Gauge {
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
	if (!gauge) throw new Refused(`No conductor carries ${ampsText(currentA)} over ${lengthM} m.`);
	return gauge;
}

/** Draws the device and both conductors between it and its landing. */
export function drawCircuit(sketch: Sketch, circuit: NewCircuit, fuseA: number, plus: TerminalRef, minus: TerminalRef): void {
	const { diagram } = sketch;
	const id = freshId(diagram.parts, 'N');
	const gauge = gaugeFor(diagram, circuit, fuseA);
	const bus = diagram.parts[plus.part]!.at;
	const count = Object.keys(diagram.parts).length;
	const part: Pick<Part, 'kind' | 'params'> = circuit.source
		? { kind: 'solar-controller', params: { maxA: circuit.currentA } }
		: { kind: 'load', params: { draw: circuit.currentA, critical: circuit.critical, connection: 'studs' } };
	sketch.run(
		addPart({ id, part: { ...part, label: circuit.name, at: { x: bus.x + 260 + 40 * (count % 5), y: bus.y + 180 + 40 * (count % 7) } } })
	);
	const label = nextLabel(diagram, 'C');
	const rest = { gauge, lengthM: circuit.lengthM };
	const draw = (suffix: string, from: TerminalRef, to: TerminalRef) =>
		sketch.run(addConductor({ id: freshId(sketch.diagram.conductors, 'W'), conductor: { ...rest, label: `${label}${suffix}`, from, to } }));
	draw('+', plus, { part: id, terminal: 'pos' });
	draw('−', { part: id, terminal: 'neg' }, minus);
	for (const caseId of circuit.offIn ?? []) sketch.run(setLevel({ case: caseId, part: id, level: 0 }));
	sketch.buys.push(`${2 * circuit.lengthM} m of ${gaugeText(gauge)} with four terminals for ${circuit.name}`);
}

/** The emptiest stud for a return on the bus that most returns of these circuits land on. */
export function returnStud(diagram: Diagram, bus: PartId): TerminalRef {
	const landed = landings(diagram);
	const uses = new Map<PartId, number>();
	for (const { from, to } of Object.values(diagram.conductors))
		for (const { part } of [from, to]) uses.set(part, (uses.get(part) ?? 0) + 1);
	const studs = Object.entries(diagram.parts).flatMap(([part, value]) => {
		const { links, terminals } = describe(value);
		if (part === bus || links.length === 0 || links.some(({ kind }) => kind !== 'segment')) return [];
		return terminals
			.filter(({ role, kind }) => role === 'negative' && kind === 'stud')
			.map(({ id, maxTerminals }) => ({ part, terminal: id, maxTerminals }));
	});
	const load = ({ part, terminal }: TerminalRef) => landed.get(studKey({ part, terminal }))?.length ?? 0;
	const thickness = ({ part, terminal }: TerminalRef) =>
		Math.max(
			0,
			...(landed.get(studKey({ part, terminal })) ?? []).map((item) =>
				item.kind === 'lug' ? compareGauges(diagram.conductors[item.conductor]!.gauge, { system: 'awg', size: '18' }) : 0
			)
		);
	const [best] = studs
		.filter((stud) => load(stud) < stud.maxTerminals)
		.sort((a, b) => (uses.get(b.part) ?? 0) - (uses.get(a.part) ?? 0) || load(a) - load(b) || thickness(a) - thickness(b));
	if (!best) throw new Refused('There is no stud left for another return: a longer negative bus comes first.');
	return { part: best.part, terminal: best.terminal };
}
