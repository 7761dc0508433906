/** How many conductors run through each cell of a coarse grid. */
import type { Stretch } from './stretch-bins.ts';

/** Side of a cell: about a part and the aisle beside it. */
export const CELL_MM = 256;

/** Stretches over more cells than this are not counted: no real drawing is so large. */
const FAR_CELLS = 1000;

/** More cells than a drawing has in one direction. */
const STRIDE = 2 ** 24;

export const cellOf = (mm: number): number => Math.floor(mm / CELL_MM);

/** Stretches of one direction: for each cell the number that somebody going straight across it would meet. */
export class Crowding {
	readonly #met = new Map<number, number>();

	/** @param times 1 when the stretch comes, −1 when it goes. */
	count({ at, from, to }: Stretch, times: 1 | -1): void {
		if (cellOf(to) - cellOf(from) > FAR_CELLS) return;
		const across = cellOf(at);
		for (let along = cellOf(from); along * CELL_MM < to; along++) {
			const share = (Math.min(to, (along + 1) * CELL_MM) - Math.max(from, along * CELL_MM)) / CELL_MM;
			const key = across * STRIDE + along;
			this.#met.set(key, (this.#met.get(key) ?? 0) + times * share);
		}
	}

	/** @param across Cell across the stretches. @param along Cell along them. */
	metIn(across: number, along: number): number {
		return this.#met.get(across * STRIDE + along) ?? 0;
	}
}
