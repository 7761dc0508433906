import { cableDiameterMm, lugOf } from '#core/conductors';
import type { Gauge } from '#core/diagram';
import type { Paint, Primitive } from '#core/graphics';
import type { Layer } from '#core/studs';
import type { Direction } from './directions.ts';
import { at, breakLine, circle, COPPER, endOn, polygon, slab } from './outline.ts';

/** From pad to barrel the tube opens by about this share of the step, and a little. */
const neckMm = (barrelMm: number, thicknessMm: number): number => Math.max(0, barrelMm - thicknessMm) * 0.55 + 1.5;

/** How far a lug reaches from the stud's axis: with enough of its barrel to be known as one, and with all of it. */
export function lugReachMm(gauge: Gauge, thicknessMm: number): { readonly leastMm: number; readonly wholeMm: number } {
	const { padWidthMm, lengthMm, barrelMm } = lugOf(gauge);
	return { leastMm: padWidthMm / 2 + neckMm(barrelMm, thicknessMm) + 5, wholeMm: lengthMm + 10 };
}

/**
 * A lug with its barrel and the end of its cable: pad flat on what is below, barrel flush with the pad's underside.
 * Toward the one who looks the cable is seen from its end, away it is behind the stack.
 */
export function drawLug(layer: Layer, gauge: Gauge, direction: Direction, reachMm: number, insulation: Paint): Primitive[] {
	const { padWidthMm, thicknessMm, lengthMm, barrelMm } = lugOf(gauge);
	const cableMm = cableDiameterMm(gauge);
	const z = layer.bottomMm;
	const pad = slab(-padWidthMm / 2, padWidthMm / 2, z, z + thicknessMm, { ...COPPER, r: Math.min(0.6, thicknessMm / 3) });
	if (direction === 'near') {
		return [
			pad,
			endOn(z + barrelMm / 2, barrelMm, 'metal', false),
			circle(0, -z - barrelMm / 2, barrelMm * 0.36, { fill: insulation, stroke: 'case-edge', width: 0.25 }),
			circle(0, -z - barrelMm / 2, barrelMm * 0.22, { fill: 'conductor:orange', opacity: 0.9 })
		];
	}
	if (direction === 'far') return [endOn(z + barrelMm / 2, barrelMm, 'metal', true), pad];

	const side = direction === 'left' ? -1 : 1;
	const neck = padWidthMm / 2 + neckMm(barrelMm, thicknessMm);
	const barrelEnd = Math.min(lengthMm, reachMm);
	// Shrink sleeve over the inner part of the barrel, in the colour of the insulation.
	const sleeve = Math.min(neck + (Math.min(lengthMm, reachMm) - neck) * 0.5, neck + (lengthMm - neck) * 0.55);
	const axis = z + barrelMm / 2;
	const cut = reachMm < lengthMm;
	return [
		...(cut
			? []
			: [
					slab(side * lengthMm, side * reachMm, axis - cableMm / 2, axis + cableMm / 2, {
						fill: insulation,
						stroke: 'case-edge',
						width: 0.25
					})
				]),
		polygon(
			[
				at((side * padWidthMm) / 2 - side, z),
				at(side * neck, z),
				at(side * neck, z + barrelMm),
				at((side * padWidthMm) / 2 - side, z + thicknessMm)
			],
			COPPER
		),
		slab(side * neck, side * barrelEnd, z, z + barrelMm, COPPER),
		slab(side * sleeve, side * barrelEnd, z - 0.3, z + barrelMm + 0.3, { fill: insulation, stroke: 'case-edge', width: 0.25 }),
		pad,
		cut
			? breakLine(side * reachMm, z - 0.3, z + barrelMm + 0.3, side)
			: breakLine(side * reachMm, axis - cableMm / 2, axis + cableMm / 2, side)
	];
}

/** Top of the barrel above the seat. */
export const lugTopMm = (layer: Layer, gauge: Gauge): number => layer.bottomMm + Math.max(lugOf(gauge).barrelMm, layer.thicknessMm);
