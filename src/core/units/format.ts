import { FAHRENHEIT_PER_KELVIN, fahrenheitFromCelsius, feetFromMetres, inchesFromMillimetres } from './convert.ts';
import { reader } from './reader.ts';

/** Below this a figure is rounding of the arithmetic, not a quantity: nobody measures a picoampere here. */
const NOTHING = 1e-9;

/** Digits of a number with the reader's decimal mark: "3.5" → "3,5". */
export const marked = (digits: string): string => (reader().decimal === ',' ? digits.replace('.', ',') : digits);

/** The number with all its digits, as a reader writes it: 12.75 → "12,75". */
export const decimalText = (value: number): string => marked(String(value));

/** The number with so many decimals, and as many zeros: 12 → "12.0". */
export const fixedText = (value: number, decimals: number): string => marked(value.toFixed(decimals));

/** The number with at most so many decimals, without trailing zeros. */
export const roundedText = (value: number, decimals: number): string => marked(String(Number(value.toFixed(decimals))));

/** The number with at most `digits` significant digits and no trailing zeros: 0.4270 → "0.427". */
export function compactNumber(value: number, digits = 3): string {
	if (!Number.isFinite(value)) return value > 0 ? 'unlimited' : String(value);
	if (Math.abs(value) < NOTHING) return '0';
	if (Math.abs(value) >= 10 ** (digits - 1)) return String(Math.round(value));
	return marked(String(Number(value.toPrecision(digits))));
}

export const ampsText = (amps: number): string =>
	Math.abs(amps) >= 1000 && Number.isFinite(amps) ? `${compactNumber(amps / 1000)} kA` : `${compactNumber(amps)} A`;

export const voltsText = (volts: number): string =>
	Math.abs(volts) < 0.1 && volts !== 0 ? `${compactNumber(volts * 1000)} mV` : `${roundedText(volts, 2)} V`;

export const ohmsText = (ohms: number): string => (Math.abs(ohms) < 1 ? `${compactNumber(ohms * 1000)} mΩ` : `${compactNumber(ohms)} Ω`);

export const percentText = (percent: number): string => `${roundedText(percent, 1)} %`;
export const wattsText = (watts: number): string => `${compactNumber(watts)} W`;

/** "3.5 m", "11 ft 6 in". */
export const metresText = (metres: number): string => (reader().long === 'ft' ? feetText(metres) : `${roundedText(metres, 2)} m`);

/** Below this a length is given in inches, as it is on a tape: 3 ft. */
const INCHES_BELOW = 36;

function feetText(metres: number): string {
	const inches = feetFromMetres(metres) * 12;
	if (Math.abs(inches) < INCHES_BELOW) return `${roundedText(inches, 1)} in`;
	const whole = Math.round(inches);
	const rest = Math.abs(whole) % 12;
	return `${Math.trunc(whole / 12)} ft${rest === 0 ? '' : ` ${rest} in`}`;
}

/** "3.1 mm", "0.122 in": an inch has more decimals than a millimetre, so that both are as exact. */
export const millimetresText = (mm: number, digits = 3): string =>
	reader().short === 'in' ? `${inchDigits(mm)} in` : `${compactNumber(mm, digits)} mm`;

/** The same to a tenth of a millimetre. */
export const tenthsText = (mm: number): string => (reader().short === 'in' ? `${inchDigits(mm)} in` : `${roundedText(mm, 1)} mm`);

/** Width and height: "120 × 90 mm", "4.72 × 3.54 in". */
export const sizeText = (widthMm: number, heightMm: number): string =>
	`${tenthsText(widthMm).replace(/ \S+$/, '')} × ${tenthsText(heightMm)}`;

/** Always two or three decimals, as on a calliper; a length off the tape has one at most (`feetText`). */
const inchDigits = (mm: number): string => fixedText(inchesFromMillimetres(mm), Math.abs(mm) < 25 ? 3 : 2);

/** "−35 °C", "77 °F", with a true minus sign. */
export const celsiusText = (celsius: number): string =>
	(reader().temperature === '°F' ? `${compactNumber(fahrenheitFromCelsius(celsius))} °F` : `${compactNumber(celsius)} °C`).replace(
		'-',
		'−'
	);

/** A difference of temperatures: "20 K", "36 °F". */
export const kelvinText = (kelvin: number): string =>
	reader().temperature === '°F' ? `${compactNumber(kelvin * FAHRENHEIT_PER_KELVIN)} °F` : `${compactNumber(kelvin)} K`;
