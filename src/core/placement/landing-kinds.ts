/** The places where a circuit can land, and what it takes to land there. */
import {
	addPart,
	freshId,
	mountBlock,
	nextLabel,
	reconnectConductor,
	studKey,
	type ConductorEnd,
	type ConductorId,
	type Diagram,
	type PartId,
	type TerminalRef
} from '#core/diagram';
import { describe } from '#core/parts';
import { landings } from '#core/studs';
import type { FuseFamilyId } from '#core/tables';
import { ampsText } from '#core/units';
import { drawCircuit, fuseFor, returnStud, type Newcomer, type OldCircuit } from './circuits.ts';
import { fuseBehind, hasHolder } from './holders.ts';
import { conductorText, studText } from './names.ts';
import { Refused, type Sketch } from './sketch.ts';

/** A new circuit, or one that is there and moves. */
export type Comer = Newcomer | { readonly kind: 'old'; readonly circuit: OldCircuit };

export const nameOf = ({ circuit }: Comer): string => circuit.name;

export const fuseOf = (diagram: Diagram, comer: Comer, family: FuseFamilyId | null): number =>
	comer.kind === 'new'
		? fuseFor(diagram, comer.circuit, family)
		: fuseFor(diagram, { currentA: 0, continuous: false, fuseA: comer.circuit.fuseA }, family);

/** Lands a circuit on a stud or clamp that has its fuse; `minus` where its return goes, left out where it stays or is chosen. */
export function land(sketch: Sketch, bus: PartId, comer: Comer, fuseA: number, plus: TerminalRef, minus?: TerminalRef): void {
	if (comer.kind === 'new') {
		drawCircuit(sketch, comer, fuseA, plus, minus ?? returnStud(sketch, bus));
		return;
	}
	const { conductor, end, name } = comer.circuit;
	move(sketch, conductor, end, plus);
	sketch.steps.push(`${name} moves to ${studText(sketch.diagram, plus)}, ${ampsText(fuseA)}.`);
	const back = minus && returnOf(sketch.diagram, comer.circuit);
	if (back) move(sketch, back.conductor, back.end, minus);
}

/** A conductor that is there to another stud; its lug serves again where the thread is the same. */
export function move(sketch: Sketch, conductor: ConductorId, end: ConductorEnd, on: TerminalRef): void {
	const threadAt = (diagram: Diagram, { part, terminal }: TerminalRef) => describe(diagram.parts[part]!).terminal(terminal)?.thread;
	const was = threadAt(sketch.diagram, sketch.diagram.conductors[conductor]![end]);
	sketch.run(reconnectConductor({ conductor, end, on }));
	const is = threadAt(sketch.diagram, on);
	const name = conductorText(sketch.diagram, conductor);
	sketch.moves.push({
		text: `${name} moves to ${studText(sketch.diagram, on)}${is === was ? ' with its lug' : ', with another lug'}`,
		newLug: is !== was
	});
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
	// Its neighbours on a full bus are loaded too.
	const fuseA = comer.kind === 'new' ? fuseFor(sketch.diagram, comer.circuit, family, true) : fuseOf(sketch.diagram, comer, family);
	fuseAt(sketch, bus, terminal, fuseA, nameOf(comer));
	land(sketch, bus, comer, fuseA, { part: bus, terminal });
}

/** Fits the fuse of a position. */
export function fuseAt(sketch: Sketch, bus: PartId, terminal: string, fuseA: number, name: string): void {
	if (fuseBehind(sketch.diagram.parts[bus]!, terminal)?.ratingA !== fuseA)
		sketch.buys.push({ text: `fuse ${ampsText(fuseA)} for ${studText(sketch.diagram, { part: bus, terminal })}`, pieces: 1 });
	sketch.fit(bus, terminal, fuseA, name);
}

export const busFamily = ({ parts }: Diagram, bus: PartId): FuseFamilyId | null =>
	(describe(parts[bus]!).params.family as FuseFamilyId | undefined) ?? null;

/** On a stud without a fuse, in a single or twin fuse block. */
export function inBlock(sketch: Sketch, bus: PartId, on: TerminalRef, comers: readonly Comer[]): void {
	const fuses = comers.map((comer) => fuseOf(sketch.diagram, comer, 'cube'));
	const posts = mountBlockWith(sketch, on, fuses);
	for (const [index, comer] of comers.entries()) land(sketch, bus, comer, fuses[index]!, posts[index]!);
}

/** An adapter post on a stud, and a single block for each circuit on its faces. */
export function onAdapter(sketch: Sketch, bus: PartId, on: TerminalRef, comers: readonly Comer[]): void {
	const host = describe(sketch.diagram.parts[on.part]!).terminal(on.terminal)!;
	const id = freshId(sketch.diagram.parts, 'A');
	const label = nextLabel(sketch.diagram, 'X');
	const params: Record<string, number | string> = { faces: comers.length, ...(host.thread ? { hostThread: host.thread } : {}) };
	sketch.run(addPart({ id, part: { kind: 'adapter-post', label, at: sketch.diagram.parts[on.part]!.at, params } }));
	sketch.run(mountBlock({ block: id, on }));
	sketch.steps.push(`An adapter post ${label} goes on ${studText(sketch.diagram, on)}.`);
	sketch.buys.push({ text: `adapter post ${label} with ${comers.length === 1 ? 'one face' : `${comers.length} faces`}`, pieces: 1 });
	if (sketch.diagram.system.craft !== 'cabin') sketch.risks.push(`Adapter post ${label} levers on its stud where it shakes.`);
	for (const [index, comer] of comers.entries()) inBlock(sketch, bus, { part: id, terminal: String(index + 1) }, [comer]);
}

/** A block with one or two cube fuses, and its posts. */
export function mountBlockWith(sketch: Sketch, on: TerminalRef, fuses: readonly number[]): TerminalRef[] {
	const host = describe(sketch.diagram.parts[on.part]!).terminal(on.terminal)!;
	const id = freshId(sketch.diagram.parts, 'F');
	const twin = fuses.length === 2;
	const params: Record<string, number> = twin ? { fuseAA: fuses[0]!, fuseBA: fuses[1]! } : { fuseA: fuses[0]! };
	sketch.run(
		addPart({
			id,
			part: {
				kind: twin ? 'twin-fuse-block' : 'fuse-block',
				label: nextLabel(sketch.diagram, 'F'),
				at: sketch.diagram.parts[on.part]!.at,
				params: { ...params, plateHole: host.thread }
			}
		})
	);
	sketch.run(mountBlock({ block: id, on }));
	sketch.steps.push(`A ${twin ? 'twin' : 'single'} fuse block goes on ${studText(sketch.diagram, on)}.`);
	sketch.buys.push({
		text: `${twin ? 'twin fuse block' : 'fuse block'} with cube ${twin ? 'fuses' : 'fuse'} ${fuses.map(ampsText).join(' and ')}`,
		pieces: 1 + fuses.length
	});
	return (twin ? ['a', 'b'] : ['post']).map((terminal) => ({ part: id, terminal }));
}

/** On a free way of a panel. */
export function onWay(sketch: Sketch, bus: PartId, panel: PartId, comer: Comer): void {
	const way = freeWay(sketch.diagram, panel);
	if (!way) throw new Refused('The panel has no free way.');
	const fuseA = fuseOf(sketch.diagram, comer, busFamily(sketch.diagram, panel));
	sketch.fit(panel, way, fuseA, nameOf(comer));
	sketch.buys.push({ text: `blade fuse ${ampsText(fuseA)}`, pieces: 1 });
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
