/** Places that are taken: boxes in square cells, for questions by the thousand. */
import type { Box } from '#core/geometry';

const CELL_MM = 128;
/** More cells than a drawing has in one direction. */
const STRIDE = 2 ** 24;
/** A box over more cells than this is looked at every time. */
const MOST_CELLS = 256;

const cellOf = (mm: number): number => Math.floor(mm / CELL_MM);

export class Occupied {
	readonly #cells = new Map<number, Box[]>();
	readonly #large: Box[] = [];

	constructor(boxes: Iterable<Box>) {
		for (const box of boxes) this.add(box);
	}

	add(box: Box): void {
		const [left, right, top, bottom] = [cellOf(box.minX), cellOf(box.maxX), cellOf(box.minY), cellOf(box.maxY)];
		if ((right - left + 1) * (bottom - top + 1) > MOST_CELLS) {
			this.#large.push(box);
			return;
		}
		for (let row = top; row <= bottom; row++) {
			for (let column = left; column <= right; column++) {
				const key = row * STRIDE + column;
				const cell = this.#cells.get(key);
				if (cell) cell.push(box);
				else this.#cells.set(key, [box]);
			}
		}
	}

	/** Whether the box meets one of those, touching included. */
	meets(box: Box): boolean {
		if (this.#large.some((other) => touch(box, other))) return true;
		const right = cellOf(box.maxX);
		const bottom = cellOf(box.maxY);
		for (let row = cellOf(box.minY); row <= bottom; row++) {
			for (let column = cellOf(box.minX); column <= right; column++) {
				if (this.#cells.get(row * STRIDE + column)?.some((other) => touch(box, other))) return true;
			}
		}
		return false;
	}
}

const touch = (a: Box, b: Box): boolean => a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;
