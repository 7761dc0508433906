/** Numbers by priority, lowest first. */
export interface Heap {
	readonly size: number;
	push(priority: number, item: number): void;
	/** Item of least priority, taken out; only while there is one. */
	pop(): { readonly priority: number; readonly item: number };
}

/** A binary heap in two plain arrays: many nodes pass through it. */
export function heap(): Heap {
	const priorities: number[] = [];
	const items: number[] = [];
	const move = (from: number, to: number): void => {
		priorities[to] = priorities[from]!;
		items[to] = items[from]!;
	};
	return {
		get size() {
			return items.length;
		},
		push(priority, item) {
			let i = items.length;
			for (let parent = (i - 1) >> 1; i > 0 && priorities[parent]! > priority; parent = (i - 1) >> 1) {
				move(parent, i);
				i = parent;
			}
			priorities[i] = priority;
			items[i] = item;
		},
		pop() {
			const top = { priority: priorities[0]!, item: items[0]! };
			const [priority, item] = [priorities.pop()!, items.pop()!];
			if (items.length === 0) return top;
			let i = 0;
			for (let child = 1; child < items.length; child = 2 * i + 1) {
				if (child + 1 < items.length && priorities[child + 1]! < priorities[child]!) child++;
				if (priorities[child]! >= priority) break;
				move(child, i);
				i = child;
			}
			priorities[i] = priority;
			items[i] = item;
			return top;
		}
	};
}
