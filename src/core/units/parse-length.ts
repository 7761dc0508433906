import { metresFromFeet, metresFromInches } from './convert.ts';

const TO_METRES: Readonly<Record<string, (amount: number) => number>> = {
	m: (m) => m,
	cm: (cm) => cm / 100,
	mm: (mm) => mm / 1000,
	ft: metresFromFeet,
	feet: metresFromFeet,
	foot: metresFromFeet,
	"'": metresFromFeet,
	in: metresFromInches,
	inch: metresFromInches,
	inches: metresFromInches,
	'"': metresFromInches
};

/** "2", "2.5", ",5", "5/16", "1 1/2". */
const AMOUNT = String.raw`(\d+\s+\d+/[1-9]\d*|\d+/[1-9]\d*|\d+(?:[.,]\d+)?|[.,]\d+)\s*`;
const LENGTH = new RegExp(`^${AMOUNT}([a-z'"]*)\\.?$`, 'i');
/** "8 ft 6 in", "8' 6"". */
const FEET_AND_INCHES = new RegExp(`^${AMOUNT}(ft|feet|foot|')\\s*${AMOUNT}(in|inch|inches|")\\.?$`, 'i');

/**
 * "2.5", "2,5 m", "250 cm", "8 ft", "8' 6\"", "5/16 in" in metres, to a hundredth of a millimetre; undefined for anything else.
 *
 * @param bare unit of a number that brings none
 */
export function metresFromText(text: string, bare: 'm' | 'mm' | 'ft' | 'in' = 'm'): number | undefined {
	const plain = text.trim().replaceAll(/[′’]/g, "'").replaceAll(/[″”]/g, '"');
	const both = FEET_AND_INCHES.exec(plain);
	if (both) return rounded(metresFromFeet(amount(both[1]!)) + metresFromInches(amount(both[3]!)));
	const match = LENGTH.exec(plain);
	const unit = match && (match[2]!.toLowerCase() || bare);
	if (!match || unit === null || !Object.hasOwn(TO_METRES, unit)) return undefined;
	return rounded(TO_METRES[unit]!(amount(match[1]!)));
}

function amount(text: string): number {
	const fraction = /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(text.trim());
	if (fraction) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
	return Number(text.replace(',', '.'));
}

/** Feet and inches leave digits that nobody measured. */
const rounded = (metres: number): number => Math.round(metres * 1e5) / 1e5;
