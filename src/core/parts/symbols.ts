/**
 * Graphical symbols of IEC 60617, drawn from memory of the standard, `size` millimetres wide around (x, y).
 */
import { block, circle, line, polyline, text, type Primitive } from '#core/graphics';

const INK = { stroke: 'muted', width: 0.7, cap: 'round' } as const;

/** Fuse: a rectangle with the conductor through it. */
export const fuseSymbol = (x: number, y: number, size: number): Primitive[] => [
	block(x, y, size * 0.6, size * 0.24, INK),
	line(x - size / 2, y, x + size / 2, y, INK)
];

/** Battery: long line positive, short line negative; two cells. */
export const batterySymbol = (x: number, y: number, size: number): Primitive[] => {
	const plate = (at: number, height: number, width = 0.7) =>
		line(x + at * size, y - height * size, x + at * size, y + height * size, { ...INK, width });
	return [
		line(x - size / 2, y, x - size * 0.2, y, INK),
		plate(-0.2, 0.32),
		plate(-0.07, 0.16, 1.2),
		plate(0.07, 0.32),
		plate(0.2, 0.16, 1.2),
		line(x + size * 0.2, y, x + size / 2, y, INK)
	];
};

const openContact = (x: number, y: number, size: number): Primitive[] => [
	line(x - size / 2, y, x - size * 0.22, y, INK),
	line(x - size * 0.22, y, x + size * 0.2, y - size * 0.24, INK),
	line(x + size * 0.22, y, x + size / 2, y, INK)
];

/** Switch-disconnector: make contact with bar and ring at the fixed side. */
export const disconnectorSymbol = (x: number, y: number, size: number): Primitive[] => [
	...openContact(x, y, size),
	circle(x + size * 0.17, y, size * 0.05, INK),
	line(x + size * 0.24, y - size * 0.12, x + size * 0.24, y + size * 0.12, INK)
];

/** Circuit breaker: make contact with a cross at the fixed side. */
export const breakerSymbol = (x: number, y: number, size: number): Primitive[] => {
	const arm = size * 0.09;
	return [
		...openContact(x, y, size),
		line(x + size * 0.22 - arm, y - arm, x + size * 0.22 + arm, y + arm, INK),
		line(x + size * 0.22 - arm, y + arm, x + size * 0.22 + arm, y - arm, INK)
	];
};

/** Relay: coil and make contact. */
export const relaySymbol = (x: number, y: number, size: number): Primitive[] => [
	...openContact(x, y - size * 0.1, size),
	block(x, y + size * 0.32, size * 0.42, size * 0.24, INK),
	line(x, y + size * 0.2, x, y - size * 0.2, { ...INK, dash: [1.5, 1.2] })
];

/** Shunt: a resistor with separate taps for current and voltage. */
export const shuntSymbol = (x: number, y: number, size: number): Primitive[] => [
	block(x, y, size * 0.56, size * 0.2, INK),
	line(x - size / 2, y, x - size * 0.28, y, INK),
	line(x + size * 0.28, y, x + size / 2, y, INK),
	line(x - size * 0.2, y + size * 0.1, x - size * 0.2, y + size * 0.28, INK),
	line(x + size * 0.2, y + size * 0.1, x + size * 0.2, y + size * 0.28, INK)
];

const direct = (x: number, y: number, size: number): Primitive[] => [
	line(x - size * 0.14, y - size * 0.04, x + size * 0.14, y - size * 0.04, INK),
	line(x - size * 0.14, y + size * 0.05, x + size * 0.14, y + size * 0.05, { ...INK, dash: [size * 0.07, size * 0.035] })
];

const alternating = (x: number, y: number, size: number): Primitive[] => [
	polyline(
		Array.from({ length: 13 }, (_, step) => ({
			x: x + size * 0.16 * (step / 6 - 1),
			y: y - size * 0.07 * Math.sin((step / 6 - 1) * Math.PI)
		})),
		INK
	)
];

/** Converter: what goes in above the diagonal, what comes out below it. */
function converter(x: number, y: number, size: number, from: typeof direct, to: typeof direct): Primitive[] {
	return [
		block(x, y, size, size, { ...INK, fill: 'case' }),
		line(x - size / 2, y + size / 2, x + size / 2, y - size / 2, INK),
		...from(x - size * 0.23, y - size * 0.24, size),
		...to(x + size * 0.23, y + size * 0.24, size)
	];
}

export const inverterSymbol = (x: number, y: number, size: number): Primitive[] => converter(x, y, size, direct, alternating);
export const rectifierSymbol = (x: number, y: number, size: number): Primitive[] => converter(x, y, size, alternating, direct);
export const dcConverterSymbol = (x: number, y: number, size: number): Primitive[] => converter(x, y, size, direct, direct);

/** Rotating machine: its letter in a circle. */
export const machineSymbol = (x: number, y: number, size: number, letter: 'G' | 'M'): Primitive[] => [
	circle(x, y, size / 2, { ...INK, fill: 'case' }),
	text(x, y, letter, size * 0.5, { fill: 'muted', upright: true })
];

/** Frame or chassis. */
export const chassisSymbol = (x: number, y: number, size: number): Primitive[] => [
	line(x, y - size * 0.4, x, y, INK),
	line(x - size / 2, y, x + size / 2, y, INK),
	...[-0.5, 0, 0.5].map((at) => line(x + at * size, y, x + (at - 0.22) * size, y + size * 0.3, INK))
];
