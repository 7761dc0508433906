/** Puts things that want to be at certain heights where none overlaps another, moving them as little as can be. */

export interface Wanted {
	/** Where its middle would like to be. */
	readonly at: number;
	readonly height: number;
}

/**
 * Middles in the order given, which is the order they keep. Least squares under the distances that must be kept:
 * neighbours pushed together become one block, which lies at the mean of where its members want to be.
 */
export function spread(wanted: readonly Wanted[], gap = 0): number[] {
	interface Block {
		/** Sum of wishes, each less its member's offset in the whole row. */
		sum: number;
		count: number;
	}
	const offsets: number[] = [];
	let offset = 0;
	wanted.forEach(({ height }, index) => {
		if (index > 0) offset += (wanted[index - 1]!.height + height) / 2 + gap;
		offsets.push(offset);
	});
	const blocks: Block[] = [];
	wanted.forEach(({ at }, index) => {
		let block: Block = { sum: at - offsets[index]!, count: 1 };
		for (let last = blocks.at(-1); last && last.sum / last.count >= block.sum / block.count; last = blocks.at(-1)) {
			blocks.pop();
			block = { sum: last.sum + block.sum, count: last.count + block.count };
		}
		blocks.push(block);
	});
	return blocks.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count)).map((base, index) => base + offsets[index]!);
}
