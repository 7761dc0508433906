/** How a quantity that is kept in one unit is shown in a field and read back, in the reader's unit or in any that is typed. */
import { celsiusFromFahrenheit, fahrenheitFromCelsius, feetFromMetres, inchesFromMillimetres } from './convert.ts';
import { decimalText, roundedText } from './format.ts';
import { metresFromText } from './parse-length.ts';
import { reader } from './reader.ts';

export interface FieldUnit {
	/** Beside the field: "m", "ft". */
	readonly unit: string;
	/** The kept value in that unit, without it. */
	show(value: number): string;
	/** What was typed, in the kept unit; undefined when it is nothing of the kind. */
	read(text: string): number | undefined;
}

/** @param unit in which the value is kept: "m", "mm", "°C", "A", or nothing */
export function fieldUnit(unit: string): FieldUnit {
	if (unit === 'm') return length(reader().long, 'm', feetFromMetres, 1);
	if (unit === 'mm') return length(reader().short, 'mm', inchesFromMillimetres, 1000);
	if (unit === '°C') return temperature();
	return { unit, show: decimalText, read: (text) => plainNumber(text, unit) };
}

function length<Kept extends 'm' | 'mm'>(
	shown: Kept | 'ft' | 'in',
	kept: Kept,
	toForeign: (value: number) => number,
	perMetre: number
): FieldUnit {
	return {
		unit: shown,
		show: (value) => (shown === kept ? decimalText(value) : roundedText(toForeign(value), 3)),
		read(text) {
			const metres = metresFromText(text, shown);
			return metres === undefined ? undefined : Number((metres * perMetre).toPrecision(9));
		}
	};
}

const DEGREES = /^([-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*(?:°?\s*(c|f))?$/i;

function temperature(): FieldUnit {
	const unit = reader().temperature;
	return {
		unit,
		show: (value) => (unit === '°C' ? decimalText(value) : roundedText(fahrenheitFromCelsius(value), 1)),
		read(text) {
			const match = DEGREES.exec(text.trim());
			if (!match) return undefined;
			const value = Number(match[1]!.replace('−', '-').replace(',', '.'));
			const given = match[2]?.toUpperCase() ?? unit.charAt(1);
			return given === 'F' ? Number(celsiusFromFahrenheit(value).toFixed(2)) : value;
		}
	};
}

/** "12", "12,5", "12 A"; a unit other than the field's is not guessed at. */
function plainNumber(text: string, unit: string): number | undefined {
	const trimmed = text.trim();
	const digits = unit !== '' && trimmed.endsWith(unit) ? trimmed.slice(0, -unit.length).trim() : trimmed;
	const value = digits === '' ? Number.NaN : Number(digits.replace('−', '-').replace(',', '.'));
	return Number.isFinite(value) ? value : undefined;
}
