const STEADY = 1e-5;
const MOST_ROUNDS = 40;

/**
 * Where a falling function of a positive number meets it: x = f(x), within 1e-5 of x. False position that does not let
 * one end stand still (Dowell and Jarratt's Illinois rule). 0 where the function is not positive at the start.
 */
export function fixedPoint(f: (x: number) => number, start: number): number {
	if (!(start > 0)) return 0;
	const excess = (x: number): number => f(x) - x;
	let low = { x: 0, y: start };
	let high = { x: start, y: excess(start) };
	for (let round = 0; round < MOST_ROUNDS && high.y > 0; round++) {
		low = high;
		high = { x: 2 * high.x, y: excess(2 * high.x) };
	}
	for (let round = 0; round < MOST_ROUNDS && high.y < 0; round++) {
		const x = (low.x * high.y - high.x * low.y) / (high.y - low.y);
		const y = excess(x);
		if (Math.abs(y) <= STEADY * x) return x;
		if (y > 0) {
			low = { x, y };
			high = { x: high.x, y: high.y / 2 };
		} else {
			high = { x, y };
			low = { x: low.x, y: low.y / 2 };
		}
	}
	return high.x;
}
