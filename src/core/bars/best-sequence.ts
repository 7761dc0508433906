/** Which circuit goes where along a bar. */
import type { BarCase } from './bar.ts';

const HAIR = 1e-9;

interface Step {
	readonly heatW: number;
	/** Circuits that are not where they were. */
	readonly moved: number;
	/** The slot whose circuit was placed last, and the set before it. */
	readonly from: number;
}

/**
 * For each slot, the slot whose circuit belongs there: least greatest segment current over all cases, then least heat,
 * then fewest moved. Only slots of one group exchange circuits. What flows beyond a slot depends on which circuits lie
 * before it and not on their order, so the exact answer takes one step for each set of circuits: up to 16 slots.
 */
export function bestSequence(cases: readonly BarCase[], segmentOhm: readonly number[], groups: readonly string[]): number[] {
	const slots = groups.length;
	const sets = 2 ** slots;
	const size = new Uint8Array(sets);
	const greatestA = new Float64Array(sets);
	const heatW = new Float64Array(sets);
	const sums = cases.map(() => new Float64Array(sets));
	for (let set = 1; set < sets; set++) {
		const lowest = 31 - Math.clz32(set & -set);
		const rest = set & (set - 1);
		size[set] = size[rest]! + 1;
		for (const [index, { drawnA }] of cases.entries()) {
			const sum = sums[index]!;
			sum[set] = sum[rest]! + drawnA[lowest]!;
			if (set === sets - 1) continue;
			greatestA[set] = Math.max(greatestA[set]!, Math.abs(sum[set]!));
			heatW[set] = heatW[set]! + sum[set]! ** 2 * segmentOhm[size[set]! - 1]!;
		}
	}

	/** Slots whose circuit may have been the last of a set. */
	const lastOf = function* (set: number): Generator<number> {
		const group = groups[size[set]! - 1];
		for (let slot = 0; slot < slots; slot++) if (set & (1 << slot) && groups[slot] === group) yield slot;
	};

	const least = new Float64Array(sets).fill(Infinity);
	least[0] = 0;
	for (let set = 1; set < sets; set++) {
		for (const last of lastOf(set)) {
			const withLast = Math.max(greatestA[set]!, least[set ^ (1 << last)]!);
			if (withLast < least[set]!) least[set] = withLast;
		}
	}

	const isEmpty = groups.map((_, slot) => cases.every(({ drawnA }) => Math.abs(drawnA[slot]!) < HAIR));
	const limitA = least[sets - 1]! * (1 + HAIR) + HAIR;
	const best: (Step | undefined)[] = [{ heatW: 0, moved: 0, from: -1 }];
	for (let set = 1; set < sets; set++) {
		if (greatestA[set]! > limitA) continue;
		for (const last of lastOf(set)) {
			const before = best[set ^ (1 << last)];
			if (!before) continue;
			const step = {
				heatW: before.heatW + heatW[set]!,
				moved: before.moved + Number(!isEmpty[last] && last !== size[set]! - 1),
				from: last
			};
			if (isBetter(step, best[set])) best[set] = step;
		}
	}

	const order: number[] = [];
	for (let set = sets - 1; set > 0;) {
		const { from } = best[set]!;
		order.unshift(from);
		set ^= 1 << from;
	}
	return order;
}

function isBetter(a: Step, b: Step | undefined): boolean {
	if (!b) return true;
	if (Math.abs(a.heatW - b.heatW) > HAIR * Math.max(a.heatW, b.heatW)) return a.heatW < b.heatW;
	return a.moved < b.moved;
}
