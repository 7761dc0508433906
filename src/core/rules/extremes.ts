/** The item of which a figure is greatest, the first of equals; undefined of none. */
export function greatest<Item>(items: readonly Item[], figureOf: (item: Item) => number): Item | undefined {
	let found: Item | undefined;
	let most = -Infinity;
	for (const item of items) {
		const figure = figureOf(item);
		// Infinity below zero counts as well.
		if (found !== undefined && figure <= most) continue;
		found = item;
		most = figure;
	}
	return found;
}

/** The item of which a figure is least, the first of equals; undefined of none. */
export const least = <Item>(items: readonly Item[], figureOf: (item: Item) => number): Item | undefined =>
	greatest(items, (item) => -figureOf(item));
