/** What is often done on a full bus and never offered. */
import { reorderStack, studKey, type Diagram, type PartId, type TerminalRef } from '#core/diagram';
import { describe } from '#core/parts';
import { landings } from '#core/studs';
import { barOf } from '#core/bars';
import { circuitsOn, drawCircuit, fuseFor, newcomersOf, returnStud, type Newcomer } from './circuits.ts';
import { mountBlockWith } from './landing-kinds.ts';
import type { Plan } from './plan.ts';
import type { FullBusRequest } from './request.ts';
import type { Sketch } from './sketch.ts';

export interface Shortcut extends Plan {
	/** Why it is refused whatever the rules find. */
	readonly why: string;
}

export function* shortcutsFor(diagram: Diagram, { bus, circuits }: FullBusRequest): Generator<Shortcut> {
	const [comer] = newcomersOf(diagram, circuits);
	if (!comer) return;
	const { name } = comer.circuit;
	const draw = (sketch: Sketch, plus: TerminalRef, minus?: TerminalRef) =>
		drawCircuit(sketch, comer, fuseFor(diagram, comer.circuit, null), plus, minus ?? returnStud(sketch, bus));
	const [smallest] = circuitsOn(diagram, bus).toSorted((a, b) => a.fuseA - b.fuseA);
	if (smallest)
		yield {
			id: 'two-behind-one-fuse',
			title: `Put ${name} under the nut of position ${smallest.terminal}, with ${smallest.name}`,
			why: 'Two circuits behind one fuse: neither is protected for its own size, and a fault in one puts out both.',
			draw: (sketch) => drawCircuit(sketch, comer, smallest.fuseA, { part: bus, terminal: smallest.terminal }, returnStud(sketch, bus))
		};
	const end = emptiestEnd(diagram, { bus });
	if (!end) return;
	yield {
		id: 'bare-on-the-bar',
		title: `Put ${name} straight on end stud ${end.terminal}`,
		why: 'The end stud has no fuse: only the main fuses would protect the conductor.',
		draw: (sketch) => draw(sketch, end)
	};
	yield {
		id: 'lug-under-the-fuse',
		title: `Put ${name} under the cube fuse of a block on end stud ${end.terminal}`,
		why: 'Below the fuse the lug lies on the plate: current reaches it without going through the fuse.',
		draw: (sketch) => underTheFuse(sketch, bus, end, comer)
	};
	const shunt = batterySide(diagram);
	if (shunt)
		yield {
			id: 'return-before-the-shunt',
			title: `Return ${name} to the battery side of the shunt`,
			why: 'The monitor would not count its current.',
			draw: (sketch) => draw(sketch, end, shunt)
		};
}

/** The unfused stud of the bus with the least on it. */
function emptiestEnd(diagram: Diagram, { bus }: Pick<FullBusRequest, 'bus'>): TerminalRef | null {
	const landed = landings(diagram);
	const load = (terminal: string) => landed.get(studKey({ part: bus, terminal }))?.length ?? 0;
	const ends = barOf(diagram, bus)?.slots.filter(({ fused }) => !fused) ?? [];
	const [end] = ends.toSorted((a, b) => load(a.terminal) - load(b.terminal));
	return end ? { part: bus, terminal: end.terminal } : null;
}

function underTheFuse(sketch: Sketch, bus: PartId, end: TerminalRef, comer: Newcomer): void {
	const fuseA = fuseFor(sketch.diagram, comer.circuit, 'cube');
	const [post] = mountBlockWith(sketch, end, [fuseA]);
	drawCircuit(sketch, comer, fuseA, post!, returnStud(sketch, bus));
	sketch.run(reorderStack({ stud: studKey(post!), stack: [{ kind: 'lug', conductor: comer.plusId, end: 'from' }, { kind: 'fuse' }] }));
}

function batterySide({ parts }: Diagram): TerminalRef | null {
	for (const [part, value] of Object.entries(parts)) {
		const link = describe(value).links.find(({ kind }) => kind === 'shunt');
		if (link && 'between' in link) return { part, terminal: link.between[0] };
	}
	return null;
}
