/** The places where a circuit can land, and what it takes to land there. */
import {
	addConductor,
	addPart,
	freshId,
	mountBlock,
	nextLabel,
	reconnectConductor,
	setParams,
	studKey,
	type Diagram,
	type Gauge,
	type PartId,
	type TerminalRef
} from '#core/diagram';
import { compareGauges } from '#core/conductors';
import { describe, fieldMeta } from '#core/parts';
import { landings } from '#core/studs';
import type { FuseFamilyId } from '#core/tables';
import { ampsText } from '#core/units';
import { barOf } from './bar.ts';
import { drawCircuit, fuseFor, returnStud, type OldCircuit } from './circuits.ts';
import { fuseBehind, hasHolder } from './holders.ts';
import type { NewCircuit } from './request.ts';
import { Refused, type Sketch } from './sketch.ts';

/** A new circuit, or one that is there and moves. */
export type Comer = { readonly kind: 'new'; readonly circuit: NewCircuit } | { readonly kind: 'old'; readonly circuit: OldCircuit };

export const nameOf = ({ circuit }: Comer): string => circuit.name;

export const fuseOf = (diagram: Diagram, comer: Comer, family: FuseFamilyId | null): number =>
	comer.kind === 'new'
		? fuseFor(diagram, comer.circuit, family)
		: fuseFor(diagram, { currentA: 0, continuous: false, fuseA: comer.circuit.fuseA }, family);

/** Lands a circuit on a stud or clamp that has its fuse; `minus` where its return goes, left out where it stays or is chosen. */
function land(sketch: Sketch, bus: PartId, comer: Comer, fuseA: number, plus: TerminalRef, minus?: TerminalRef): void {
	if (comer.kind === 'new') {
		drawCircuit(sketch, comer.circuit, fuseA, plus, minus ?? returnStud(sketch.diagram, bus));
		return;
	}
	const { conductor, end, name } = comer.circuit;
	sketch.run(reconnectConductor({ conductor, end, on: plus }));
	sketch.disturbed.push(`${name} + moves to ${studKey(plus)}`);
	const back = minus && returnOf(sketch.diagram, comer.circuit);
	if (!minus || !back) return;
	sketch.run(reconnectConductor({ ...back, on: minus }));
	sketch.disturbed.push(`${name} − moves to ${studKey(minus)}`);
}

/** The one conductor that leads from the device's negative terminal. */
function returnOf(diagram: Diagram, { device }: OldCircuit) {
	const negatives = new Set(
		describe(diagram.parts[device]!)
			.terminals.filter(({ role }) => role === 'negative')
			.map(({ id }) => id)
	);
	const isAt = ({ part, terminal }: TerminalRef) => part === device && negatives.has(terminal);
	const found = Object.entries(diagram.conductors).filter(([, { from, to }]) => isAt(from) || isAt(to));
	const [only] = found;
	return found.length === 1 && only ? { conductor: only[0], end: isAt(only[1].from) ? ('to' as const) : ('from' as const) } : null;
}

/** On a position of the bus, which is made free first. */
export function onPosition(sketch: Sketch, bus: PartId, terminal: string, comer: Comer): void {
	const family = busFamily(sketch.diagram, bus);
	const fuseA = fuseOf(sketch.diagram, comer, family);
	if (fuseBehind(sketch.diagram.parts[bus]!, terminal)?.ratingA !== fuseA)
		sketch.buys.push(`fuse ${ampsText(fuseA)} for position ${terminal}`);
	sketch.fit(bus, terminal, fuseA, nameOf(comer));
	land(sketch, bus, comer, fuseA, { part: bus, terminal });
}

export const busFamily = ({ parts }: Diagram, bus: PartId): FuseFamilyId | null =>
	(describe(parts[bus]!).params.family as FuseFamilyId | undefined) ?? null;

/** On an end stud, in a single or twin fuse block. */
export function onEndStud(sketch: Sketch, bus: PartId, terminal: string, comers: readonly Comer[]): void {
	const host = describe(sketch.diagram.parts[bus]!).terminal(terminal)!;
	const fuses = comers.map((comer) => fuseOf(sketch.diagram, comer, 'cube'));
	const id = freshId(sketch.diagram.parts, 'F');
	const twin = comers.length === 2;
	const params: Record<string, number> = twin ? { fuseAA: fuses[0]!, fuseBA: fuses[1]! } : { fuseA: fuses[0]! };
	sketch.run(
		addPart({
			id,
			part: {
				kind: twin ? 'twin-fuse-block' : 'fuse-block',
				label: nextLabel(sketch.diagram, 'F'),
				at: sketch.diagram.parts[bus]!.at,
				params: { ...params, plateHole: host.thread }
			}
		})
	);
	sketch.run(mountBlock({ block: id, on: { part: bus, terminal } }));
	sketch.buys.push(`${twin ? 'twin fuse block' : 'fuse block'} with cube ${twin ? 'fuses' : 'fuse'} ${fuses.map(ampsText).join(' and ')}`);
	for (const [index, comer] of comers.entries())
		land(sketch, bus, comer, fuses[index]!, { part: id, terminal: twin ? ['a', 'b'][index]! : 'post' });
}

/** On a free way of a panel. */
export function onWay(sketch: Sketch, bus: PartId, panel: PartId, comer: Comer): void {
	const way = freeWay(sketch.diagram, panel);
	if (!way) throw new Refused('The panel has no free way.');
	const fuseA = fuseOf(sketch.diagram, comer, busFamily(sketch.diagram, panel));
	sketch.fit(panel, way, fuseA, nameOf(comer));
	sketch.buys.push(`blade fuse ${ampsText(fuseA)}`);
	const back = describe(sketch.diagram.parts[panel]!).terminal(`n${way}`);
	land(sketch, bus, comer, fuseA, { part: panel, terminal: way }, back && { part: panel, terminal: back.id });
}

/** The first clamp on the positive side with nothing on it and a holder for a fuse. */
export function freeWay(diagram: Diagram, panel: PartId): string | null {
	const part = diagram.parts[panel]!;
	const landed = landings(diagram);
	const free = describe(part).terminals.find(
		({ id, kind, role }) =>
			kind === 'clamp' &&
			role === 'positive' &&
			!landed.has(studKey({ part: panel, terminal: id })) &&
			!fuseBehind(part, id) &&
			hasHolder(part, id)
	);
	return free?.id ?? null;
}

/** Panels fed from a position of the bus. */
export const panelsOn = (diagram: Diagram, circuits: readonly OldCircuit[]): PartId[] =>
	circuits.map(({ device }) => device).filter((device) => freeWay(diagram, device) !== null);

const LINK_M = 0.15;

/** The link carries what the feed may let through: as thick as the thickest conductor on a stud without a fuse. */
function feedGauge(diagram: Diagram, bus: PartId): Gauge {
	const open = new Set(barOf(diagram, bus)!.slots.flatMap(({ terminal, fused }) => (fused ? [] : [terminal])));
	const gauges = Object.values(diagram.conductors).flatMap(({ from, to, gauge }) =>
		[from, to].some(({ part, terminal }) => part === bus && open.has(terminal)) ? [gauge] : []
	);
	return gauges.reduce<Gauge>((a, b) => (compareGauges(b, a) > 0 ? b : a), gauges[0] ?? { system: 'awg', size: '4/0' });
}

/** All on a second bus like this one, linked end to end. */
export function onSecondBus(sketch: Sketch, bus: PartId, terminal: string, comers: readonly Comer[]): void {
	const { kind, params, at, rotation } = sketch.diagram.parts[bus]!;
	const second = freshId(sketch.diagram.parts, 'D');
	const positions = positionsParam(sketch.diagram, bus);
	if (!positions || comers.length > positions.count) throw new Refused('A second bus of the same make has too few positions.');
	sketch.run(
		addPart({
			id: second,
			part: {
				kind,
				label: nextLabel(sketch.diagram, 'D'),
				at: { x: at.x, y: at.y - 320 },
				rotation,
				params: {
					...params,
					...Object.fromEntries(positions.lists.map(({ name, filler }) => [name, Array<typeof filler>(positions.count).fill(filler)]))
				} as typeof params
			}
		})
	);
	const bar = barOf(sketch.diagram, second)!;
	const entry = bar.slots.find(({ fused }) => !fused);
	if (!entry) throw new Refused('A second bus has no stud for the link.');
	sketch.run(
		addConductor({
			id: freshId(sketch.diagram.conductors, 'W'),
			conductor: {
				label: nextLabel(sketch.diagram, 'W'),
				from: { part: bus, terminal },
				to: { part: second, terminal: entry.terminal },
				gauge: feedGauge(sketch.diagram, bus),
				lengthM: LINK_M
			}
		})
	);
	sketch.buys.push('a second fused bus with cover', `a link of ${LINK_M} m`);
	const free = bar.slots.filter(({ fused }) => fused);
	for (const [index, comer] of comers.entries()) onPosition(sketch, second, free[index]!.terminal, comer);
}

/** All on a bus with as many more positions. */
export function onLongerBus(sketch: Sketch, bus: PartId, comers: readonly Comer[]): void {
	const positions = positionsParam(sketch.diagram, bus);
	if (!positions) throw new Refused('This bus is not made with more positions.');
	const lists = positions.lists.map(({ name, value, filler }) => [
		name,
		[...Array.from({ length: positions.count }, (_, i) => value[i] ?? filler), ...comers.map(() => filler)]
	]);
	const params = { [positions.name]: positions.count + comers.length, ...Object.fromEntries(lists) };
	const next = { ...sketch.diagram.parts[bus]!, params: { ...sketch.diagram.parts[bus]!.params, ...params } };
	if (describe(next).problems.length > 0) throw new Refused('No bus is made with so many positions.');
	sketch.run(setParams({ parts: [bus], params }));
	for (const key of landings(sketch.diagram).keys()) if (key.startsWith(`${bus}.`)) sketch.disturbed.push(`${key} moves to the new bus`);
	sketch.buys.push(`a bus with ${positions.count + comers.length} positions in place of ${positions.count}`);
	const before = barOf(sketch.diagram, bus)!.slots.filter(({ fused }) => fused);
	for (const [index, comer] of comers.entries()) onPosition(sketch, bus, before[positions.count + index]!.terminal, comer);
}

/** The parameter that says how many positions there are, and the lists with an entry for each. */
function positionsParam({ parts }: Diagram, bus: PartId) {
	const { definition, params } = describe(parts[bus]!);
	const lists = Object.entries(definition?.params.shape ?? {}).flatMap(([name, schema]) => {
		const value = params[name];
		return Array.isArray(value) && fieldMeta(schema).countedBy !== undefined
			? [
					{
						name,
						value: value as (string | number | null)[],
						countedBy: fieldMeta(schema).countedBy!,
						filler: name === 'names' ? '' : null
					}
				]
			: [];
	});
	const [first] = lists;
	return first ? { name: first.countedBy, count: Number(params[first.countedBy]), lists } : null;
}
