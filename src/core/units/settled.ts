/**
 * A solved figure to 33 binary digits, one part in 10¹⁰ (T. J. Dekker, "A floating-point technique for extending the
 * available precision", 1971): what lies below is rounding, which changes with every edit anywhere.
 */
export function settled(value: number): number {
	if (!Number.isFinite(value)) return value;
	const scaled = value * (2 ** 20 + 1);
	return scaled - (scaled - value);
}
