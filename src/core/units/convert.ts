/** Exact by definition: 1 in = 25.4 mm (international inch). */
const MM_PER_INCH = 25.4;

export const millimetresFromInches = (inches: number): number => inches * MM_PER_INCH;
export const metresFromInches = (inches: number): number => (inches * MM_PER_INCH) / 1000;
export const metresFromFeet = (feet: number): number => (feet * 12 * MM_PER_INCH) / 1000;

/** A circular mil is the area of a circle 0.001 in across. */
export const squareMmFromCircularMils = (circularMils: number): number => (circularMils * Math.PI * (0.001 * MM_PER_INCH) ** 2) / 4;
