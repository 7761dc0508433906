/**
 * Length of a circuit from its fuse, one way, within which a dead short exceeds what the fuse can break, metres; 0
 * where it can break a short right behind it. The fuse's own resistance is not counted.
 *
 * @param openV volts before the short
 * @param sourceOhm what limits the current right behind the fuse
 * @param loopOhmPerM positive and negative conductor together
 */
export const clearingDistanceM = (openV: number, sourceOhm: number, breakingA: number, loopOhmPerM: number): number =>
	Math.max(0, (openV / breakingA - sourceOhm) / loopOhmPerM);
