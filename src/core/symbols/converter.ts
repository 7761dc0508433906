/** Converters: a square parted by its diagonal, what goes in above it, what comes out below. IEC 60617, from memory: not yet verified. */
import { block, line, polyline, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

type Sign = (x: number, y: number, size: number) => Primitive[];

const direct: Sign = (x, y, size) => [
	line(x - size * 0.13, y - size * 0.04, x + size * 0.13, y - size * 0.04, LINE),
	line(x - size * 0.13, y + size * 0.05, x + size * 0.13, y + size * 0.05, { ...LINE, dash: [size * 0.06, size * 0.04] })
];

const alternating: Sign = (x, y, size) => [
	polyline(
		Array.from({ length: 13 }, (_, step) => ({
			x: x + size * 0.15 * (step / 6 - 1),
			y: y - size * 0.07 * Math.sin((step / 6 - 1) * Math.PI)
		})),
		LINE
	)
];

/** Two arrows: light that falls on it. */
const light: Sign = (x, y, size) =>
	[0, 0.14].flatMap((shift) => {
		const [ax, ay] = [x + (shift - 0.18) * size, y - size * 0.12];
		const [bx, by] = [ax + size * 0.16, ay + size * 0.16];
		return [
			line(ax, ay, bx, by, LINE),
			polyline(
				[
					{ x: bx - size * 0.09, y: by },
					{ x: bx, y: by },
					{ x: bx, y: by - size * 0.09 }
				],
				LINE
			)
		];
	});

const converter =
	(from: Sign, to: Sign) =>
	(size: number): Primitive[] => [
		block(0, 0, size, size, SHAPE),
		line(-size / 2, size / 2, size / 2, -size / 2, LINE),
		...from(-size * 0.22, -size * 0.24, size),
		...to(size * 0.22, size * 0.24, size)
	];

export const dcConverter = converter(direct, direct);
export const inverter = converter(direct, alternating);
export const rectifier = converter(alternating, direct);
/** A controller between an array and a battery: the array is outside the drawing. */
export const solar = converter(light, direct);
