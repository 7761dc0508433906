import type { Scene } from '#core/drawing';
import type { Primitive } from '#core/graphics';

/** Everything the canvas paints of a scene, in its order: names and tags lie over all parts and conductors. */
export function scenePrimitives({ items, order }: Scene): Primitive[] {
	const drawn = order.flatMap((key) => items.get(key) ?? []);
	return [...drawn.flatMap(({ primitives }) => primitives), ...drawn.flatMap(({ labels }) => labels)];
}
