/**
 * Binary heap of numbered states, least cost first. Equal costs leave in a fixed order, so the same search always
 * gives the same route.
 */
export class CostHeap {
	#costs: number[] = [];
	#states: number[] = [];

	get size(): number {
		return this.#states.length;
	}

	clear(): void {
		this.#costs.length = 0;
		this.#states.length = 0;
	}

	push(state: number, cost: number): void {
		const costs = this.#costs;
		const states = this.#states;
		let at = states.length;
		costs.push(cost);
		states.push(state);
		while (at > 0) {
			const parent = (at - 1) >> 1;
			if (costs[parent]! <= cost) break;
			costs[at] = costs[parent]!;
			states[at] = states[parent]!;
			at = parent;
		}
		costs[at] = cost;
		states[at] = state;
	}

	/** The state of least cost; the heap must not be empty. */
	pop(): number {
		const costs = this.#costs;
		const states = this.#states;
		const top = states[0]!;
		const cost = costs.pop()!;
		const state = states.pop()!;
		const size = states.length;
		if (size === 0) return top;
		let at = 0;
		for (;;) {
			let child = 2 * at + 1;
			if (child >= size) break;
			if (child + 1 < size && costs[child + 1]! < costs[child]!) child++;
			if (costs[child]! >= cost) break;
			costs[at] = costs[child]!;
			states[at] = states[child]!;
			at = child;
		}
		costs[at] = cost;
		states[at] = state;
		return top;
	}
}
