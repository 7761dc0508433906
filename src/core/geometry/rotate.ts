/** Quarter turns, clockwise on the drawing (y points down), so that coordinates stay exact. */
import type { Box, Point, Side } from './point.ts';

/** Degrees clockwise. */
export type QuarterTurn = 0 | 90 | 180 | 270;

const SIDES: readonly Side[] = ['north', 'east', 'south', 'west'];

/** Unit vector away from a terminal. */
const OUTWARD: Readonly<Record<Side, Point>> = {
	north: { x: 0, y: -1 },
	east: { x: 1, y: 0 },
	south: { x: 0, y: 1 },
	west: { x: -1, y: 0 }
};

const quarters = (turn: QuarterTurn): number => turn / 90;

/** Negation without making −0, which prints and compares oddly. */
const minus = (value: number): number => (value === 0 ? 0 : -value);

/** About the origin. */
export function rotatePoint({ x, y }: Point, turn: QuarterTurn): Point {
	switch (turn) {
		case 0:
			return { x, y };
		case 90:
			return { x: minus(y), y: x };
		case 180:
			return { x: minus(x), y: minus(y) };
		case 270:
			return { x: y, y: minus(x) };
	}
}

/** About the origin. */
export function rotateBox(box: Box, turn: QuarterTurn): Box {
	const a = rotatePoint({ x: box.minX, y: box.minY }, turn);
	const b = rotatePoint({ x: box.maxX, y: box.maxY }, turn);
	return { minX: Math.min(a.x, b.x), minY: Math.min(a.y, b.y), maxX: Math.max(a.x, b.x), maxY: Math.max(a.y, b.y) };
}

export const rotateSide = (side: Side, turn: QuarterTurn): Side => SIDES[(SIDES.indexOf(side) + quarters(turn)) % 4]!;

export const oppositeSide = (side: Side): Side => rotateSide(side, 180);

export const addTurns = (a: QuarterTurn, b: QuarterTurn): QuarterTurn => ((a + b) % 360) as QuarterTurn;

export const outward = (side: Side): Point => OUTWARD[side];

/** True for east and west. */
export const isHorizontal = (side: Side): boolean => side === 'east' || side === 'west';
