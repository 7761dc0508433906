/** Stretches of conductors already routed, for the price of crossing them or running along them. */
import type { Box, Point } from '#core/geometry';

export interface Stretch {
	/** Coordinate of its line: y of a horizontal stretch, x of a vertical one. */
	readonly at: number;
	readonly from: number;
	readonly to: number;
	readonly widthMm: number;
	/** First and last stretches are held by their terminals. */
	readonly held: boolean;
}

/** No conductor is so thick that it disturbs another farther away. */
const NEAR_MM = 30;

export class Tracks {
	readonly #horizontal = new Map<string, Stretch[]>();
	readonly #vertical = new Map<string, Stretch[]>();

	/** Replaces the stretches of this conductor. `firm` says that none of them will give way any more. */
	set(id: string, route: readonly Point[], widthMm: number, firm = false): void {
		const horizontal: Stretch[] = [];
		const vertical: Stretch[] = [];
		for (let i = 1; i < route.length; i++) {
			const a = route[i - 1]!;
			const b = route[i]!;
			const held = firm || i === 1 || i === route.length - 1;
			if (a.y === b.y) horizontal.push({ at: a.y, from: Math.min(a.x, b.x), to: Math.max(a.x, b.x), widthMm, held });
			else vertical.push({ at: a.x, from: Math.min(a.y, b.y), to: Math.max(a.y, b.y), widthMm, held });
		}
		this.#horizontal.set(id, horizontal);
		this.#vertical.set(id, vertical);
	}

	delete(id: string): void {
		this.#horizontal.delete(id);
		this.#vertical.delete(id);
	}

	/** Whether the route neither crosses another conductor nor runs along a held stretch. */
	isUndisturbed(id: string, route: readonly Point[]): boolean {
		for (let i = 1; i < route.length; i++) {
			const a = route[i - 1]!;
			const b = route[i]!;
			const level = a.y === b.y;
			const [along, across] = level ? [this.#horizontal, this.#vertical] : [this.#vertical, this.#horizontal];
			const [at, from, to] = level ? [a.y, Math.min(a.x, b.x), Math.max(a.x, b.x)] : [a.x, Math.min(a.y, b.y), Math.max(a.y, b.y)];
			for (const [other, stretches] of across) {
				if (other !== id && stretches.some((s) => s.at > from && s.at < to && s.from < at && s.to > at)) return false;
			}
			for (const [other, stretches] of along) {
				if (other !== id && stretches.some((s) => s.held && Math.abs(s.at - at) < NEAR_MM && s.from < to && s.to > from)) return false;
			}
		}
		return true;
	}

	horizontalIn(window: Box): Stretch[] {
		return within(this.#horizontal, window.minY, window.maxY, window.minX, window.maxX);
	}

	verticalIn(window: Box): Stretch[] {
		return within(this.#vertical, window.minX, window.maxX, window.minY, window.maxY);
	}
}

function within(all: ReadonlyMap<string, readonly Stretch[]>, low: number, high: number, from: number, to: number): Stretch[] {
	const found: Stretch[] = [];
	for (const stretches of all.values()) {
		for (const stretch of stretches) {
			if (stretch.at >= low && stretch.at <= high && stretch.to >= from && stretch.from <= to) found.push(stretch);
		}
	}
	return found;
}
