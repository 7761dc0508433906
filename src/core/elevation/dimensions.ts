/** Heights at the left edge, as draughtsmen give them: a line, ticks, and the number beside it. */
import type { Box } from '#core/geometry';
import { line, text, textWidthMm, type Paint, type Primitive } from '#core/graphics';
import { spread } from './spread.ts';
import { tenthsText, reader, millimetresFromInches, millimetresText } from '#core/units';

export interface Span {
	readonly name: string;
	readonly fromMm: number;
	readonly toMm: number;
	readonly paint: Paint;
}

export interface Dimensions {
	readonly primitives: readonly Primitive[];
	readonly words: readonly Box[];
}

/** @param ticksMm heights of the layers' edges, marked by short ticks */
export function drawDimensions(spans: readonly Span[], ticksMm: readonly number[], xMm: number, textMm: number, wide: boolean): Dimensions {
	const tick = textMm * 0.32;
	const thin = textMm * 0.06;
	const size = textMm * 0.9;
	const fromTop = spans.toSorted((a, b) => b.fromMm + b.toMm - a.fromMm - a.toMm);
	const middles = spread(fromTop.map(({ fromMm, toMm }) => ({ at: -(fromMm + toMm) / 2, height: size * 1.25 })));
	const words: Box[] = [];
	const primitives: Primitive[] = ticksMm.map((z) => line(xMm - tick / 2, -z, xMm + tick / 2, -z, { stroke: 'muted', width: thin }));
	fromTop.forEach(({ name, fromMm, toMm, paint }, index) => {
		const y = middles[index]!;
		const number = tenthsText(toMm - fromMm).replace(/ \S+$/, '');
		const written = wide ? `${name} ${number}` : number;
		const right = xMm - textMm * 0.55;
		primitives.push(
			line(xMm, -fromMm, xMm, -toMm, { stroke: paint, width: thin * 1.4 }),
			line(xMm - tick, -fromMm, xMm + tick, -fromMm, { stroke: paint, width: thin * 1.4 }),
			line(xMm - tick, -toMm, xMm + tick, -toMm, { stroke: paint, width: thin * 1.4 }),
			text(right, y, written, size, { align: 'end', fill: paint === 'muted' ? 'muted' : paint })
		);
		words.push({ minX: right - textWidthMm(written, size), maxX: right, minY: y - size * 0.6, maxY: y + size * 0.6 });
	});
	return { primitives, words };
}

/** By what the reader measures with. */
const SCALE_STEPS_MM = { mm: [1, 2, 5, 10, 20, 50], in: [0.05, 0.1, 0.2, 0.5, 1, 2].map(millimetresFromInches) } as const;

/** A bar of round length, at most about this wide, in two halves of light and dark. */
export function drawScaleBar(xMm: number, yMm: number, roomMm: number, textMm: number): Dimensions {
	const steps = SCALE_STEPS_MM[reader().short];
	const lengthMm = steps.filter((step) => step <= roomMm).at(-1) ?? steps[0]!;
	const high = textMm * 0.28;
	const size = textMm * 0.85;
	const words = millimetresText(lengthMm);
	const half = (index: number): Primitive => ({
		kind: 'rect',
		x: xMm + (index * lengthMm) / 2,
		y: yMm - high / 2,
		w: lengthMm / 2,
		h: high,
		fill: index === 0 ? 'muted' : 'case',
		stroke: 'muted',
		width: textMm * 0.05
	});
	const left = xMm + lengthMm + textMm * 0.4;
	return {
		primitives: [half(0), half(1), text(left, yMm, words, size, { align: 'start', fill: 'muted' })],
		words: [{ minX: left, maxX: left + textWidthMm(words, size), minY: yMm - size * 0.6, maxY: yMm + size * 0.6 }]
	};
}
