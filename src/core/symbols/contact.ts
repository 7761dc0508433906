/** Contacts, drawn open as the standard has them at rest. IEC 60617, from memory: not yet verified. */
import { block, circle, line, type Primitive } from '#core/graphics';
import { LINE, SHAPE } from './ink.ts';

/** Where the fixed side begins. */
const FIXED = 0.2;

/** Switch: a make contact. */
export const contact = (size: number): Primitive[] => [
	line(-size / 2, 0, -size * 0.24, 0, LINE),
	line(-size * 0.24, 0, size * 0.17, -size * 0.24, LINE),
	line(size * FIXED, 0, size / 2, 0, LINE)
];

/** Switch-disconnector: ring and bar at the fixed side. */
export const disconnector = (size: number): Primitive[] => [
	...contact(size),
	line(size * FIXED, -size * 0.11, size * FIXED, size * 0.11, LINE),
	circle(size * (FIXED - 0.06), 0, size * 0.045, SHAPE)
];

/** Circuit breaker: a cross at the fixed side. */
export function breaker(size: number): Primitive[] {
	const [x, arm] = [size * FIXED, size * 0.08];
	return [...contact(size), line(x - arm, -arm, x + arm, arm, LINE), line(x - arm, arm, x + arm, -arm, LINE)];
}

/** Relay: the coil under its contact, joined by a dashed line. */
export const relay = (size: number): Primitive[] => [
	...contact(size),
	line(0, -size * 0.12, 0, size * 0.2, { ...LINE, width: 0.8, dash: [2, 1.6] }),
	block(0, size * 0.3, size * 0.44, size * 0.2, SHAPE)
];
