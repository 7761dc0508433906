/** Something common to all readings that is fitted along with a suspect, with how far it is expected to stray. */
export interface Nuisance {
	/** By reading. */
	readonly response: readonly number[];
	readonly spread: number;
}

export interface Fit {
	/** Amount of the response that fits best; never below zero. */
	readonly amount: number;
	/** Standard deviation of it; infinite where the readings do not see it. */
	readonly uncertainty: number;
	/** Fall of the sum of squares against no such response. */
	readonly gain: number;
}

/** Weighted least squares of one response at a time, the nuisances fitted along: those are worked in once. */
export interface Fitter {
	/** Sum of squares over variance of what the nuisances leave. */
	readonly misfit: number;
	fit(response: readonly number[]): Fit;
	/** Amount of each nuisance once `amount` of a response is taken out. */
	nuisances(response: readonly number[], amount: number): number[];
}

/** @param differences reading less model, and `sigma` the meter's standard deviation, in the same unit */
export function fitter(differences: readonly number[], sigma: number, nuisances: readonly Nuisance[]): Fitter {
	// Bayesian: the expected spread of a nuisance acts as one more reading of it, so that the sums stay solvable.
	const normal = nuisances.map((a, i) =>
		nuisances.map((b, j) => dot(a.response, b.response) / sigma ** 2 + (i === j ? 1 / a.spread ** 2 : 0))
	);
	const seen = (values: readonly number[]): number[] => nuisances.map(({ response }) => dot(response, values) / sigma ** 2);
	/** Product of two vectors after the nuisances have taken their part. */
	const product = (a: readonly number[], b: readonly number[]): number =>
		dot(a, b) / sigma ** 2 - dot(seen(a), solveSmall(normal, seen(b)));
	const misfit = product(differences, differences);
	return {
		misfit,
		fit(response) {
			const own = product(response, response);
			// What the nuisances can imitate is not seen.
			if (!(own > 1e-9 * (dot(response, response) / sigma ** 2)) || own <= 0) return { amount: 0, uncertainty: Infinity, gain: 0 };
			const common = product(response, differences);
			const amount = Math.max(0, common / own);
			return { amount, uncertainty: 1 / Math.sqrt(own), gain: amount * common };
		},
		nuisances: (response, amount) => solveSmall(normal, seen(differences.map((difference, i) => difference - amount * response[i]!)))
	};
}

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/** Gaussian elimination of a small, symmetric, positive matrix. */
function solveSmall(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
	const rows = matrix.map((row, i) => [...row, right[i]!]);
	for (let k = 0; k < rows.length; k++) {
		for (let i = k + 1; i < rows.length; i++) {
			const factor = rows[i]![k]! / rows[k]![k]!;
			for (let j = k; j <= rows.length; j++) rows[i]![j]! -= factor * rows[k]![j]!;
		}
	}
	const solution: number[] = new Array(rows.length).fill(0);
	for (let k = rows.length - 1; k >= 0; k--) {
		const known = rows[k]!.slice(k + 1, rows.length).reduce((sum, value, i) => sum + value * solution[k + 1 + i]!, 0);
		solution[k] = (rows[k]![rows.length]! - known) / rows[k]![k]!;
	}
	return solution;
}
