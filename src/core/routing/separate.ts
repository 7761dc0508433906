/**
 * Positions on a line: each item wants to be somewhere, must stay within its limits, and pairs keep apart. Where
 * there is not enough room the spacing shrinks, but only there; the order is never given up.
 */
export interface Lane {
	readonly wanted: number;
	readonly low: number;
	readonly high: number;
}

/** The item `before` lies at least `by` below the item `after`; indices rise: before < after. */
export interface Spacing {
	readonly before: number;
	readonly after: number;
	readonly by: number;
}

const SHRINK = 0.75;
const MOST_ROUNDS = 14;

/**
 * @param lanes In the order in which they are to lie.
 * @returns Positions, and how far the tightest spacing had to shrink (1: not at all).
 */
export function separate(lanes: readonly Lane[], spacings: readonly Spacing[]): { at: number[]; tightest: number } {
	const scale = spacings.map(() => 1);
	const into = groupBy(spacings, 'after', lanes.length);
	const outOf = groupBy(spacings, 'before', lanes.length);
	let lowest: number[] = [];
	let highest: number[] = [];

	for (let round = 0; round < MOST_ROUNDS; round++) {
		lowest = lanes.map((lane) => lane.low);
		for (let i = 0; i < lanes.length; i++) {
			for (const s of into[i]!) lowest[i] = Math.max(lowest[i]!, lowest[spacings[s]!.before]! + spacings[s]!.by * scale[s]!);
		}
		highest = lanes.map((lane) => lane.high);
		for (let i = lanes.length - 1; i >= 0; i--) {
			for (const s of outOf[i]!) highest[i] = Math.min(highest[i]!, highest[spacings[s]!.after]! - spacings[s]!.by * scale[s]!);
		}
		let fits = true;
		spacings.forEach(({ before, after, by }, s) => {
			if (lowest[before]! + by * scale[s]! <= highest[after]! + 1e-9) return;
			fits = false;
			scale[s]! *= SHRINK;
		});
		if (fits) break;
	}

	const at: number[] = [];
	lanes.forEach((lane, i) => {
		let low = lane.low;
		for (const s of into[i]!) low = Math.max(low, at[spacings[s]!.before]! + spacings[s]!.by * scale[s]!);
		at.push(Math.min(lane.high, Math.max(low, Math.min(highest[i]!, lane.wanted))));
	});
	return { at, tightest: Math.min(1, ...scale) };
}

function groupBy(spacings: readonly Spacing[], end: 'before' | 'after', count: number): number[][] {
	const groups: number[][] = Array.from({ length: count }, () => []);
	spacings.forEach((spacing, s) => groups[spacing[end]]!.push(s));
	return groups;
}
