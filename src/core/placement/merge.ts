/** Two circuits behind one position: a thicker feeder to a small fused bus near both, and a fuse for each leg there. */
import { gaugeText } from '#core/conductors';
import { addConductor, addPart, editConductors, freshId, nextLabel, type Param, type PartId } from '#core/diagram';
import { usedLengthM } from '#core/network';
import { studyOf } from '#core/remedies';
import { ampsText, metresText } from '#core/units';
import { barOf } from '#core/bars';
import { drawCircuit, freeAt, fuseFor, gaugeFor, returnStud, type Newcomer, type OldCircuit } from './circuits.ts';
import { busFamily, fuseAt, fuseOf, move } from './landing-kinds.ts';
import { partText, studText } from './names.ts';
import { positionsParam } from './other-bus.ts';
import { Refused, type Sketch } from './sketch.ts';

/** From the small bus to the device that is there, metres: assumed. */
const LEG_M = 0.5;
const BESIDE_MM = { x: -80, y: 320 };

export function behindOneFuse(sketch: Sketch, bus: PartId, old: OldCircuit, comer: Newcomer): void {
	const { diagram } = sketch;
	const positions = positionsParam(diagram, bus);
	if (!positions) throw new Refused('There is no small fused bus of this make.');
	const view = studyOf(diagram).conductor(old.conductor);
	const feederM = usedLengthM(diagram.conductors[old.conductor]!).lengthM - LEG_M;
	if (feederM < LEG_M) throw new Refused(`${old.name} is too near to the bus for a split on the way.`);

	const family = busFamily(diagram, bus);
	const currentA = view.continuous.currentA + comer.circuit.currentA;
	const feederA = Math.max(fuseFor(diagram, { currentA, continuous: true }, family), old.fuseA);
	const id = freshId(diagram.parts, 'D');
	const label = nextLabel(diagram, 'D');
	const ownA = fuseOf(diagram, comer, family);
	const two = Object.fromEntries(positions.lists.map(({ name, filler }) => [name, [filler, filler] as Param]));
	const at = freeAt(diagram, diagram.parts[bus]!.at, BESIDE_MM);
	sketch.run(
		addPart({
			id,
			part: { kind: diagram.parts[bus]!.kind, label, at, params: { ...diagram.parts[bus]!.params, ...two, [positions.name]: 2 } }
		})
	);
	const slots = barOf(sketch.diagram, id)!.slots;
	const [first, second] = slots.filter(({ fused }) => fused);
	const entry = slots.find(({ fused }) => !fused);
	if (!first || !second || !entry) throw new Refused('There is no small fused bus of this make.');
	sketch.steps.push(`A fused bus ${label} with two positions is set ${metresText(LEG_M)} before ${old.name}.`);
	sketch.buys.push({ text: `a fused bus ${label} with two positions and cover`, pieces: 4 });

	move(sketch, old.conductor, old.end, { part: id, terminal: first.terminal });
	sketch.run(editConductors({ conductors: [old.conductor], set: { lengthM: LEG_M } }));
	fuseAt(sketch, id, first.terminal, old.fuseA, old.name);

	const gauge = gaugeFor(sketch.diagram, { currentA, lengthM: feederM, critical: comer.circuit.critical }, feederA);
	fuseAt(sketch, bus, old.terminal, feederA, label);
	sketch.run(
		addConductor({
			id: freshId(sketch.diagram.conductors, 'W'),
			conductor: {
				label: nextLabel(sketch.diagram, 'W'),
				from: { part: bus, terminal: old.terminal },
				to: { part: id, terminal: entry.terminal },
				gauge,
				lengthM: feederM
			}
		})
	);
	sketch.steps.push(
		`${partText(sketch.diagram, id)} is fed from ${studText(sketch.diagram, { part: bus, terminal: old.terminal })} through ${ampsText(feederA)}, ${gaugeText(gauge)}.`
	);
	sketch.buys.push({ text: `${metresText(feederM)} of ${gaugeText(gauge)} with two lugs`, pieces: 2 });

	const legM = Math.max(LEG_M, comer.circuit.lengthM - feederM);
	fuseAt(sketch, id, second.terminal, ownA, comer.circuit.name);
	drawCircuit(sketch, comer, ownA, { part: id, terminal: second.terminal }, returnStud(sketch, bus), legM);
}
