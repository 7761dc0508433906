/** A blade-fuse panel for small circuits, behind one fuse at the bus. */
import { addConductor, addPart, freshId, nextLabel, type PartId, type TerminalRef } from '#core/diagram';
import { gaugeText } from '#core/conductors';
import { ampsText, metresText } from '#core/units';
import { freeAt, fuseFor, gaugeFor, returnStud } from './circuits.ts';
import { busFamily, fuseAt, mountBlockWith, onWay, type Comer } from './landing-kinds.ts';
import { studText } from './names.ts';
import type { Sketch } from './sketch.ts';

/** From the bus to the panel; what is left of each circuit's way leads on from there. Assumed. */
const FEEDER_M = 1;
const LEAST_M = 0.3;
const WAYS = 6;
const BESIDE_MM = { x: -260, y: 300 };

/** Where the panel's feeder has its fuse: in a block on an end stud, or on a position whose circuit moves into the panel. */
export type FeederPlace = { readonly end: string } | { readonly position: string };

export function onNewPanel(sketch: Sketch, bus: PartId, place: FeederPlace, comers: readonly Comer[]): void {
	const id = freshId(sketch.diagram.parts, 'P');
	const label = nextLabel(sketch.diagram, 'F');
	const currentA = comers.reduce((sum, { kind, circuit }) => sum + (kind === 'new' ? circuit.currentA : SHARE * circuit.fuseA), 0);
	const at = freeAt(sketch.diagram, sketch.diagram.parts[bus]!.at, BESIDE_MM);
	const params = { ways: WAYS, fuseA: Array<null>(WAYS).fill(null), names: Array<string>(WAYS).fill('') };
	sketch.run(addPart({ id, part: { kind: 'blade-panel', label, at, params } }));
	sketch.steps.push(`A blade-fuse panel ${label} is set ${metresText(FEEDER_M)} from the bus.`);
	sketch.buys.push({ text: `a blade-fuse panel ${label} with ${WAYS} ways`, pieces: 2 });
	for (const comer of comers) onWay(sketch, bus, id, fromPanel(comer));

	const family = 'end' in place ? 'cube' : busFamily(sketch.diagram, bus);
	const fuseA = fuseFor(sketch.diagram, { currentA, continuous: true }, family);
	const plus = feederStud(sketch, bus, place, fuseA, label);
	const minus = returnStud(sketch, bus);
	const gauge = gaugeFor(sketch.diagram, { currentA, lengthM: FEEDER_M, critical: true }, fuseA);
	const name = nextLabel(sketch.diagram, 'C');
	for (const [sign, from, to] of [
		['+', plus, { part: id, terminal: 'feed' }],
		['−', { part: id, terminal: 'neg' }, minus]
	] as const) {
		const conductor = { label: `${name}${sign}`, from, to, gauge, lengthM: FEEDER_M };
		sketch.run(addConductor({ id: freshId(sketch.diagram.conductors, 'W'), conductor }));
	}
	sketch.steps.push(`${label} is fed from ${studText(sketch.diagram, plus)} through ${ampsText(fuseA)}, ${gaugeText(gauge)}.`);
	sketch.buys.push({ text: `${metresText(2 * FEEDER_M)} of ${gaugeText(gauge)} with four lugs for the panel`, pieces: 4 });
}

/** Of a fuse's rating, what its circuit is taken to draw. */
const SHARE = 0.8;

function feederStud(sketch: Sketch, bus: PartId, place: FeederPlace, fuseA: number, label: string): TerminalRef {
	if ('end' in place) return mountBlockWith(sketch, { part: bus, terminal: place.end }, [fuseA])[0]!;
	fuseAt(sketch, bus, place.position, fuseA, label);
	return { part: bus, terminal: place.position };
}

const fromPanel = (comer: Comer): Comer =>
	comer.kind === 'old' ? comer : { ...comer, circuit: { ...comer.circuit, lengthM: Math.max(LEAST_M, comer.circuit.lengthM - FEEDER_M) } };
