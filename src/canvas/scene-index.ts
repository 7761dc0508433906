/** Where the items and studs of a scene are, kept up by identity: only what changed is moved in the index. */
import { SpatialIndex, boxContainsBox, type Box, type Point } from '#core/geometry';
import type { ItemKey } from '#core/diagram';
import type { DrawnItem, DrawnTerminal, Scene } from '#core/drawing';

export interface StudPlace extends DrawnTerminal {
	/** The part it belongs to. */
	readonly item: ItemKey;
}

export class SceneIndex {
	#items = new SpatialIndex<ItemKey>();
	#studs = new SpatialIndex<ItemKey>();
	#scene: Scene = { items: new Map(), order: [], bounds: null };
	#rank = new Map<ItemKey, number>();
	readonly #studPlaces = new Map<ItemKey, StudPlace>();

	get scene(): Scene {
		return this.#scene;
	}

	get items(): SpatialIndex<ItemKey> {
		return this.#items;
	}

	get studs(): SpatialIndex<ItemKey> {
		return this.#studs;
	}

	stud(key: ItemKey): StudPlace | null {
		return this.#studPlaces.get(key) ?? null;
	}

	update(scene: Scene): void {
		const before = this.#scene;
		if (scene === before) return;
		if (before.items.size === 0) this.#fill(scene);
		else this.#follow(before, scene);
		if (scene.order !== before.order) this.#rank = new Map(scene.order.map((key, rank) => [key, rank]));
		this.#scene = scene;
	}

	/** Loading a tree in one go is several times faster than filling it one by one. */
	#fill(scene: Scene): void {
		for (const item of scene.items.values())
			for (const terminal of item.terminals) this.#studPlaces.set(terminal.key, { ...terminal, item: item.key });
		this.#items = SpatialIndex.of([...scene.items.values()].map((item) => [item.key, item.box] as const));
		this.#studs = SpatialIndex.of([...this.#studPlaces.values()].map((stud) => [stud.key, pointBox(stud.at)] as const));
	}

	#follow(before: Scene, scene: Scene): void {
		for (const [key, item] of before.items) if (!scene.items.has(key)) this.#forget(item);
		for (const [key, item] of scene.items) {
			const old = before.items.get(key);
			if (old === item) continue;
			if (old) this.#forget(old);
			this.#learn(item);
		}
	}

	/** Items that meet the box, back to front. */
	visible(box: Box): readonly ItemKey[] {
		const { bounds, order } = this.#scene;
		if (bounds && boxContainsBox(box, bounds)) return order;
		return this.#items.search(box).sort((a, b) => this.#rank.get(a)! - this.#rank.get(b)!);
	}

	/** Position in painting order; the higher, the nearer to the eye. */
	rank(key: ItemKey): number {
		return this.#rank.get(key) ?? -1;
	}

	#learn(item: DrawnItem): void {
		this.#items.set(item.key, item.box);
		for (const terminal of item.terminals) {
			this.#studs.set(terminal.key, pointBox(terminal.at));
			this.#studPlaces.set(terminal.key, { ...terminal, item: item.key });
		}
	}

	#forget(item: DrawnItem): void {
		this.#items.remove(item.key);
		for (const { key } of item.terminals) {
			this.#studs.remove(key);
			this.#studPlaces.delete(key);
		}
	}
}

const pointBox = ({ x, y }: Point): Box => ({ minX: x, minY: y, maxX: x, maxY: y });
