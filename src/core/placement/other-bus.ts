/** A second bus beside the one that is full, or a longer one in its place. */
import { compareGauges, gaugeText } from '#core/conductors';
import { addConductor, addPart, freshId, nextLabel, setParams, terminalRef, type Diagram, type Gauge, type PartId } from '#core/diagram';
import { describe, fieldMeta } from '#core/parts';
import { findingsOf } from '#core/remedies';
import { landings } from '#core/studs';
import { fuseFamily, type FuseFamilyId } from '#core/tables';
import { barOf } from '#core/bars';
import { onPosition, type Comer } from './landing-kinds.ts';
import { conductorText, partText, studText } from './names.ts';
import { Refused, type Sketch } from './sketch.ts';
import { metresText } from '#core/units';

/** Where the present type cannot break a short at the bus, this one may: null where the bus does not take it. */
export function strongerFuses(diagram: Diagram, bus: PartId): FuseFamilyId | null {
	const { definition, params } = describe(diagram.parts[bus]!);
	const field = definition?.params.shape.family;
	const isWeak = findingsOf(diagram).some(
		({ rule, subjects }) => rule === 'interrupt-capacity' && subjects.some(({ kind, id }) => kind === 'part' && id === bus)
	);
	const takes = field !== undefined && (fieldMeta(field).options ?? []).some(({ value }) => value === STRONGER);
	return isWeak && takes && params.family !== STRONGER ? STRONGER : null;
}

const STRONGER: FuseFamilyId = 'class-t';

const LINK_M = 0.15;
/** Where a second bus is drawn, mm. */
const ABOVE_MM = 320;

/** The link carries what the feed may let through: as thick as the thickest conductor on a stud without a fuse. */
function feedGauge(diagram: Diagram, bus: PartId): Gauge {
	const open = new Set(barOf(diagram, bus)!.slots.flatMap(({ terminal, fused }) => (fused ? [] : [terminal])));
	const gauges = Object.values(diagram.conductors).flatMap(({ from, to, gauge }) =>
		[from, to].some(({ part, terminal }) => part === bus && open.has(terminal)) ? [gauge] : []
	);
	return gauges.reduce<Gauge>((a, b) => (compareGauges(b, a) > 0 ? b : a), gauges[0] ?? { system: 'awg', size: '4/0' });
}

/** All on a second bus like this one, linked end to end. */
export function onSecondBus(sketch: Sketch, bus: PartId, terminal: string, comers: readonly Comer[], fuses?: FuseFamilyId): void {
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
				at: { x: at.x, y: at.y - ABOVE_MM },
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
	const gauge = feedGauge(sketch.diagram, bus);
	sketch.run(
		addConductor({
			id: freshId(sketch.diagram.conductors, 'W'),
			conductor: {
				label: nextLabel(sketch.diagram, 'W'),
				from: { part: bus, terminal },
				to: { part: second, terminal: entry.terminal },
				gauge,
				lengthM: LINK_M
			}
		})
	);
	const name = partText(sketch.diagram, second);
	sketch.steps.push(`A second bus ${name} is linked to ${studText(sketch.diagram, { part: bus, terminal })}.`);
	sketch.buys.push(
		{
			text: `a second bus ${name} with ${positions.count} positions${fuses ? ` for ${fuseFamily(fuses).name}s` : ''}`,
			pieces: positions.count + 1
		},
		{ text: 'its cover', pieces: 1 },
		{ text: `a link of ${metresText(LINK_M)}, ${gaugeText(gauge)}, with two lugs`, pieces: 3 }
	);
	if (fuses) sketch.run(setParams({ parts: [second], params: { family: fuses } }));
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
	const count = positions.count + comers.length;
	sketch.steps.push(`A bus with ${count} positions takes the place of ${partText(sketch.diagram, bus)}.`);
	for (const [key, items] of landings(sketch.diagram)) {
		if (terminalRef(key).part !== bus) continue;
		// The studs stand elsewhere on it: what reached them hardly does.
		for (const item of items)
			if (item.kind === 'lug')
				sketch.moves.push({
					text: `${conductorText(sketch.diagram, item.conductor)} moves to ${studText(sketch.diagram, key)} of the new bus`,
					newLug: true
				});
	}
	sketch.buys.push(
		{ text: `a bus with ${count} positions in place of ${positions.count}`, pieces: count + 1, instead: positions.count + 1 },
		{ text: 'its cover', pieces: 1, instead: 1 }
	);
	const before = barOf(sketch.diagram, bus)!.slots.filter(({ fused }) => fused);
	for (const [index, comer] of comers.entries()) onPosition(sketch, bus, before[positions.count + index]!.terminal, comer);
}

/** The parameter that says how many positions there are, and the lists with an entry for each. */
export function positionsParam({ parts }: Diagram, bus: PartId) {
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
