/**
 * Boxes by key in an R-tree: what lies in a window (culling) and what lies nearest to a point (picking). Answers
 * come in no particular order from `search`; callers that paint sort by their own order.
 */
import RBush from 'rbush';
import { distanceToBox, isEmptyBox } from './box.ts';
import type { Box, Point } from './point.ts';

interface Entry<Key> extends Box {
	readonly key: Key;
}

export interface Near<Key> {
	readonly key: Key;
	readonly distance: number;
}

export class SpatialIndex<Key> {
	readonly #tree = new RBush<Entry<Key>>();
	readonly #entries = new Map<Key, Entry<Key>>();

	/** Filled in one go, which is several times faster than one by one. Throws when a key comes twice. */
	static of<Key>(items: Iterable<readonly [Key, Box]>): SpatialIndex<Key> {
		const index = new SpatialIndex<Key>();
		const entries: Entry<Key>[] = [];
		for (const [key, box] of items) {
			const entry = entryOf(key, box);
			if (index.#entries.has(key)) throw new Error(`Key ${String(key)} is already in the index.`);
			index.#entries.set(key, entry);
			entries.push(entry);
		}
		index.#tree.load(entries);
		return index;
	}

	get size(): number {
		return this.#entries.size;
	}

	has(key: Key): boolean {
		return this.#entries.has(key);
	}

	boxOf(key: Key): Box | null {
		const entry = this.#entries.get(key);
		if (!entry) return null;
		const { minX, minY, maxX, maxY } = entry;
		return { minX, minY, maxX, maxY };
	}

	/** Puts the key at this box, wherever it was before. */
	set(key: Key, box: Box): void {
		const old = this.#entries.get(key);
		if (old) {
			if (old.minX === box.minX && old.minY === box.minY && old.maxX === box.maxX && old.maxY === box.maxY) return;
			this.#tree.remove(old);
		}
		const entry = entryOf(key, box);
		this.#entries.set(key, entry);
		this.#tree.insert(entry);
	}

	/** False when the key was not there. */
	remove(key: Key): boolean {
		const entry = this.#entries.get(key);
		if (!entry) return false;
		this.#tree.remove(entry);
		return this.#entries.delete(key);
	}

	clear(): void {
		this.#tree.clear();
		this.#entries.clear();
	}

	/** Keys whose boxes meet the window, touching included. */
	search(box: Box): Key[] {
		if (isEmptyBox(box)) return [];
		return this.#tree.search(box).map((entry) => entry.key);
	}

	/** True when at least one box meets the window; cheaper than `search`. */
	collides(box: Box): boolean {
		return !isEmptyBox(box) && this.#tree.collides(box);
	}

	/**
	 * Everything within `radius` of the point, nearest first. Equal distances come in the tree's order, which depends
	 * on the order of insertion: sort again where that matters.
	 *
	 * @param exact Distance from the point to the thing itself; by default to its box. It must not be less than the
	 * distance to the box, or things outside the radius of their box are missed.
	 */
	near(point: Point, radius: number, exact?: (key: Key) => number): Near<Key>[] {
		const window = { minX: point.x - radius, minY: point.y - radius, maxX: point.x + radius, maxY: point.y + radius };
		const found: Near<Key>[] = [];
		for (const entry of this.#tree.search(window)) {
			const toBox = distanceToBox(point, entry);
			if (toBox > radius) continue;
			const away = exact ? exact(entry.key) : toBox;
			if (away <= radius) found.push({ key: entry.key, distance: away });
		}
		return found.sort((a, b) => a.distance - b.distance);
	}

	/** The nearest within `radius`, or null. */
	nearest(point: Point, radius: number, exact?: (key: Key) => number): Near<Key> | null {
		return this.near(point, radius, exact)[0] ?? null;
	}

	/** Every key, in order of insertion. */
	keys(): IterableIterator<Key> {
		return this.#entries.keys();
	}
}

function entryOf<Key>(key: Key, box: Box): Entry<Key> {
	if (!(box.minX <= box.maxX && box.minY <= box.maxY)) throw new Error(`The box of ${String(key)} is empty or not a number.`);
	return { key, minX: box.minX, minY: box.minY, maxX: box.maxX, maxY: box.maxY };
}
