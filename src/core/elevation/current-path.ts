/** The way the current takes: in by a lug, through its faces, down to the seat, or the other way. */
import { line, polygon, type Paint, type Primitive } from '#core/graphics';
import type { Joint, Stack } from '#core/studs';
import { thread } from '#core/tables';
import type { Directions } from './directions.ts';
import { at } from './outline.ts';

/** Watts in one joint that deserve a look, a second one, and an end: common practice, no source. */
const WARM_W = 1;
const HOT_W = 3;
const SCORCHING_W = 8;

export const heatPaint = (heatW: number): Paint =>
	heatW >= SCORCHING_W ? 'error' : heatW >= HOT_W ? 'warning' : heatW >= WARM_W ? 'note' : 'ok';

/** Less is not drawn. */
const LEAST_A = 0.05;

/** Amps each layer brings to the stud; negative where it takes current away. What passes its lower face, less what passes the next one above. */
export function broughtA(joints: readonly Joint[]): Map<number, number> {
	const signed = joints.map(({ currentA, toward }) => (toward === 'seat' ? currentA : -currentA));
	return new Map(joints.map(({ above }, index) => [above, signed[index]! - (signed[index + 1] ?? 0)]));
}

/** @param reachOf how far a layer's lug or plate is drawn to its side */
export function drawPath(stack: Stack, joints: readonly Joint[], directions: Directions, reachOf: (layer: number) => number): Primitive[] {
	const id = stack.terminal.thread;
	const greatestA = Math.max(0, ...joints.map(({ currentA }) => currentA));
	if (id === null || greatestA < LEAST_A) return [];
	const column = -(thread(id).majorMm / 2 + 1.7);
	const widthOf = (amps: number): number => 0.35 + 0.85 * Math.sqrt(Math.abs(amps) / greatestA);
	const middle = (layer: number | null): number =>
		layer === null ? -2.5 : stack.layers[layer]!.bottomMm + stack.layers[layer]!.thicknessMm / 2;
	const strokes: Primitive[] = [];
	const heads: Primitive[] = [];
	const stroke = (x1: number, z1: number, x2: number, z2: number, amps: number) =>
		strokes.push(line(x1, -z1, x2, -z2, { stroke: 'accent', width: widthOf(amps), cap: 'round', opacity: 0.9 }));

	for (const { below, above, currentA, toward, heatW } of joints) {
		const face = stack.layers[above]!.bottomMm;
		if (currentA >= LEAST_A) {
			stroke(column, middle(below), column, middle(above), currentA);
			const size = 0.55 + widthOf(currentA) * 0.55;
			const tip = face + (toward === 'seat' ? -size : size);
			const tail = face + (toward === 'seat' ? size * 0.8 : -size * 0.8);
			heads.push(
				polygon([at(column, tip), at(column - size, tail), at(column + size, tail)], { fill: 'accent', stroke: 'case', width: 0.15 })
			);
		}
		heads.push(heatDiamond(-column, face, heatPaint(heatW)));
	}
	for (const [layer, amps] of broughtA(joints)) {
		if (Math.abs(amps) < LEAST_A) continue;
		const direction = directions.of.get(layer);
		if (direction === 'left' || direction === 'right')
			stroke(column, middle(layer), (direction === 'left' ? -1 : 1) * reachOf(layer), middle(layer), amps);
	}
	return [...strokes, ...heads];
}

const heatDiamond = (x: number, z: number, fill: Paint): Primitive =>
	polygon([at(x, z + 0.9), at(x + 0.9, z), at(x, z - 0.9), at(x - 0.9, z)], { fill, stroke: 'case', width: 0.15 });
