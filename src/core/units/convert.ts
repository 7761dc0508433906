/** Exact by definition: 1 in = 25.4 mm (international inch). */
const MM_PER_INCH = 25.4;

export const millimetresFromInches = (inches: number): number => inches * MM_PER_INCH;
export const inchesFromMillimetres = (mm: number): number => mm / MM_PER_INCH;
export const metresFromInches = (inches: number): number => (inches * MM_PER_INCH) / 1000;
export const metresFromFeet = (feet: number): number => (feet * 12 * MM_PER_INCH) / 1000;
export const feetFromMetres = (metres: number): number => (metres * 1000) / (12 * MM_PER_INCH);

/** A circular mil is the area of a circle 0.001 in across. */
export const squareMmFromCircularMils = (circularMils: number): number => (circularMils * Math.PI * (0.001 * MM_PER_INCH) ** 2) / 4;

/** Exact by definition: 32 °F is 0 °C and a step of 9 °F is one of 5 K. */
export const FAHRENHEIT_PER_KELVIN = 9 / 5;
const FREEZING_F = 32;

export const fahrenheitFromCelsius = (celsius: number): number => celsius * FAHRENHEIT_PER_KELVIN + FREEZING_F;
export const celsiusFromFahrenheit = (fahrenheit: number): number => (fahrenheit - FREEZING_F) / FAHRENHEIT_PER_KELVIN;
