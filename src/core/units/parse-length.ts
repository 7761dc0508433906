import { metresFromFeet, metresFromInches } from './convert.ts';

const TO_METRES: Readonly<Record<string, (amount: number) => number>> = {
	'': (m) => m,
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

const AMOUNT = String.raw`(\d+(?:[.,]\d+)?|[.,]\d+)\s*`;
const LENGTH = new RegExp(`^${AMOUNT}([a-z'"]*)\\.?$`, 'i');
/** "8 ft 6 in", "8' 6"". */
const FEET_AND_INCHES = new RegExp(`^${AMOUNT}(ft|feet|foot|')\\s*${AMOUNT}(in|inch|inches|")\\.?$`, 'i');

/** "2.5", "2,5 m", "250 cm", "8 ft", "8' 6\"" in metres, to a tenth of a millimetre; undefined for anything else. Without a unit: metres. */
export function metresFromText(text: string): number | undefined {
	const plain = text.trim().replaceAll(/[′’]/g, "'").replaceAll(/[″”]/g, '"');
	const both = FEET_AND_INCHES.exec(plain);
	if (both) return rounded(metresFromFeet(amount(both[1]!)) + metresFromInches(amount(both[3]!)));
	const match = LENGTH.exec(plain);
	const unit = match?.[2]!.toLowerCase();
	if (!match || unit === undefined || !Object.hasOwn(TO_METRES, unit)) return undefined;
	return rounded(TO_METRES[unit]!(amount(match[1]!)));
}

const amount = (text: string): number => Number(text.replace(',', '.'));
/** Feet and inches leave digits that nobody measured. */
const rounded = (metres: number): number => Math.round(metres * 1e4) / 1e4;
