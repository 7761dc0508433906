/** Stretches of conductors already routed, for the price of crossing them or running along them. */
import type { Box, Point } from '#core/geometry';
import { Crowding } from './crowding.ts';
import { StretchBins, type Stretch } from './stretch-bins.ts';

/** No conductor is so thick that it disturbs another farther away. */
export const NEAR_MM = 30;

export class Tracks {
	readonly horizontal = new StretchBins();
	readonly vertical = new StretchBins();
	readonly crowdOfLevel = new Crowding();
	readonly crowdOfUpright = new Crowding();
	readonly #of = new Map<string, { readonly horizontal: Stretch[]; readonly vertical: Stretch[] }>();

	/** Replaces the stretches of this conductor. `firm` says that none of them will give way any more. */
	set(id: string, route: readonly Point[], widthMm: number, firm = false): void {
		const horizontal: Stretch[] = [];
		const vertical: Stretch[] = [];
		for (let i = 1; i < route.length; i++) {
			const a = route[i - 1]!;
			const b = route[i]!;
			const held = firm || i === 1 || i === route.length - 1;
			if (a.y === b.y) horizontal.push({ id, at: a.y, from: Math.min(a.x, b.x), to: Math.max(a.x, b.x), widthMm, held });
			else vertical.push({ id, at: a.x, from: Math.min(a.y, b.y), to: Math.max(a.y, b.y), widthMm, held });
		}
		const known = this.#of.get(id);
		if (known && sameStretches(known.horizontal, horizontal) && sameStretches(known.vertical, vertical)) {
			takeHolds(known.horizontal, horizontal);
			takeHolds(known.vertical, vertical);
			return;
		}
		this.delete(id);
		for (const stretch of horizontal) {
			this.horizontal.add(stretch);
			this.crowdOfLevel.count(stretch, 1);
		}
		for (const stretch of vertical) {
			this.vertical.add(stretch);
			this.crowdOfUpright.count(stretch, 1);
		}
		this.#of.set(id, { horizontal, vertical });
	}

	delete(id: string): void {
		const known = this.#of.get(id);
		if (!known) return;
		for (const stretch of known.horizontal) {
			this.horizontal.remove(stretch);
			this.crowdOfLevel.count(stretch, -1);
		}
		for (const stretch of known.vertical) {
			this.vertical.remove(stretch);
			this.crowdOfUpright.count(stretch, -1);
		}
		this.#of.delete(id);
	}

	/** Whether the route neither crosses another conductor nor runs along a held stretch. */
	isUndisturbed(id: string, route: readonly Point[]): boolean {
		for (let i = 1; i < route.length; i++) {
			const a = route[i - 1]!;
			const b = route[i]!;
			const level = a.y === b.y;
			const [along, across] = level ? [this.horizontal, this.vertical] : [this.vertical, this.horizontal];
			const [at, from, to] = level ? [a.y, Math.min(a.x, b.x), Math.max(a.x, b.x)] : [a.x, Math.min(a.y, b.y), Math.max(a.y, b.y)];
			for (const s of across.search(from, to, at, at)) {
				if (s.id !== id && s.at > from && s.at < to && s.from < at && s.to > at) return false;
			}
			for (const s of along.search(at - NEAR_MM, at + NEAR_MM, from, to)) {
				if (s.id !== id && s.held && Math.abs(s.at - at) < NEAR_MM && s.from < to && s.to > from) return false;
			}
		}
		return true;
	}

	/** Conductors with a stretch that meets the box, touching included. */
	idsIn({ minX, minY, maxX, maxY }: Box): Set<string> {
		const ids = new Set<string>();
		for (const { id } of this.horizontal.search(minY, maxY, minX, maxX)) ids.add(id);
		for (const { id } of this.vertical.search(minX, maxX, minY, maxY)) ids.add(id);
		return ids;
	}
}

const sameStretches = (a: readonly Stretch[], b: readonly Stretch[]): boolean =>
	a.length === b.length &&
	a.every((s, i) => s.at === b[i]!.at && s.from === b[i]!.from && s.to === b[i]!.to && s.widthMm === b[i]!.widthMm);

/** Where only that changed, which happens for many at once, they stay in their bins. */
function takeHolds(known: readonly Stretch[], next: readonly Stretch[]): void {
	known.forEach((stretch, i) => (stretch.held = next[i]!.held));
}
