/** What is often done on a full bus and never offered. */
import { studKey, type Diagram } from '#core/diagram';
import { describe } from '#core/parts';
import { landings } from '#core/studs';
import { circuitsOn, drawCircuit, fuseFor, returnStud } from './circuits.ts';
import { barOf } from './bar.ts';
import type { Plan } from './plans.ts';
import type { FullBusRequest } from './request.ts';

export interface Shortcut extends Plan {
	/** Why it is refused whatever the rules find. */
	readonly why: string;
}

export function* shortcutsFor(diagram: Diagram, { bus, circuits }: FullBusRequest): Generator<Shortcut> {
	const [circuit] = circuits;
	if (!circuit) return;
	const [smallest] = circuitsOn(diagram, bus).toSorted((a, b) => a.fuseA - b.fuseA);
	if (smallest)
		yield {
			id: 'two-behind-one-fuse',
			title: `Put ${circuit.name} under the nut of position ${smallest.terminal}, with ${smallest.name}`,
			why: 'Two circuits behind one fuse: neither is protected for its own size, and a fault in one puts out both.',
			draw: (sketch) =>
				drawCircuit(sketch, circuit, smallest.fuseA, { part: bus, terminal: smallest.terminal }, returnStud(sketch.diagram, bus))
		};
	const landed = landings(diagram);
	const end = barOf(diagram, bus)
		?.slots.filter(({ fused }) => !fused)
		.toSorted(
			(a, b) =>
				(landed.get(studKey({ part: bus, terminal: a.terminal }))?.length ?? 0) -
				(landed.get(studKey({ part: bus, terminal: b.terminal }))?.length ?? 0)
		)[0];
	if (end)
		yield {
			id: 'bare-on-the-bar',
			title: `Put ${circuit.name} straight on end stud ${end.terminal}`,
			why: 'The end stud has no fuse: only the main fuses would protect the conductor.',
			draw: (sketch) =>
				drawCircuit(
					sketch,
					circuit,
					fuseFor(diagram, circuit, null),
					{ part: bus, terminal: end.terminal },
					returnStud(sketch.diagram, bus)
				)
		};
	const shunt = Object.entries(diagram.parts).flatMap(([part, value]) => {
		const link = describe(value).links.find(({ kind }) => kind === 'shunt');
		return link && 'between' in link ? [{ part, terminal: link.between[0] }] : [];
	})[0];
	if (shunt && end)
		yield {
			id: 'return-before-the-shunt',
			title: `Return ${circuit.name} to the battery side of the shunt`,
			why: 'The monitor would not count its current.',
			draw: (sketch) => drawCircuit(sketch, circuit, fuseFor(diagram, circuit, null), { part: bus, terminal: end.terminal }, shunt)
		};
}
