/** Repeatable chance: the same seed makes the same numbers on every machine (mulberry32, public domain). */
export interface Random {
	/** From 0, below 1. */
	(): number;
}

export function randomFrom(seed: number): Random {
	let state = seed >>> 0;
	return () => {
		state = (state + 0x6d2b79f5) >>> 0;
		let mixed = Math.imul(state ^ (state >>> 15), state | 1);
		mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
		return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
	};
}

/** A whole number from 0, below `end`. */
export const below = (random: Random, end: number): number => Math.floor(random() * end);

export const oneOf = <T>(random: Random, list: readonly T[]): T => list[below(random, list.length)]!;
