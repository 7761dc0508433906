/** The figures a report is made of. Rules hand figures to their messages as numbers or already printed. */
import { celsiusFromFahrenheit, metresFromFeet, metresFromInches, millimetresFromInches } from '#core/units';

/** Names of printed data that say which thing is meant, not how much of something there is. */
const NAMES = /name|case|label|device|remedy|source|thicker|gauge$/i;

/**
 * A figure as the messages print it, for whichever reader: number, space, unit. An acceptance must not lapse because
 * somebody reads in feet.
 */
const PRINTED = /(?<![\w.,])(−)?(\d+(?:[.,]\d+)?) (?:(kA|A|mV|V|mΩ|Ω|kW|W|Ah|Wh|%|mm²|mm|m|ms|s|°C|°F|N·m|in)|ft(?: (\d+) in)?)(?![\w])/gu;

/** To the unit without a prefix, so that 990 A and 1.01 kA are close; and how the unit ends a name. */
const PRINTED_UNITS: Readonly<Record<string, readonly [scale: number, ending: string]>> = {
	kA: [1000, 'A'],
	A: [1, 'A'],
	mV: [1e-3, 'V'],
	V: [1, 'V'],
	mΩ: [1e-3, 'Ohm'],
	Ω: [1, 'Ohm'],
	kW: [1000, 'W'],
	W: [1, 'W'],
	Ah: [1, 'Ah'],
	Wh: [1, 'Wh'],
	'%': [1, 'Percent'],
	'mm²': [1, 'Mm2'],
	mm: [1, 'Mm'],
	m: [1, 'M'],
	ms: [1e-3, 'S'],
	s: [1, 'S'],
	'°C': [1, 'C'],
	'N·m': [1, 'Nm']
};

/** Value and end of the name of a printed figure. */
function printed(
	sign: string | undefined,
	digits: string,
	unit: string | undefined,
	inches: string | undefined
): readonly [value: number, ending: string] {
	const value = Number(digits.replace(',', '.'));
	if (unit === undefined) return [metresFromFeet(value) + metresFromInches(Number(inches ?? 0)), 'M'];
	// Small lengths are printed with two decimals or more, those off the tape with one at most.
	if (unit === 'in') return /[.,]\d\d/.test(digits) ? [millimetresFromInches(value), 'Mm'] : [metresFromInches(value), 'M'];
	// The sign is not taken, as of degrees Celsius.
	if (unit === '°F') return [Math.abs(celsiusFromFahrenheit(sign === '−' ? -value : value)), 'C'];
	const [scale, ending] = PRINTED_UNITS[unit]!;
	return [value * scale, ending];
}

/** Units by the end of a figure's name, as quantities are named everywhere; longer endings first. */
const ENDINGS: readonly (readonly [ending: string, unit: string])[] = [
	['Percent', '%'],
	['Milliohm', 'mΩ'],
	['Ohm', 'Ω'],
	['Mm2', 'mm²'],
	['Mm', 'mm'],
	['Nm', 'N·m'],
	['Ah', 'Ah'],
	['Wh', 'Wh'],
	['A', 'A'],
	['V', 'V'],
	['W', 'W'],
	['M', 'm'],
	['S', 's'],
	['C', '°C']
];

/** What people call a figure: "currentA" is "current" in "A"; without a known unit, the unit is empty. */
export function figureName(key: string): { readonly name: string; readonly unit: string } {
	const own = key.split('.').findLast((part) => !/^\d+$/.test(part)) ?? key;
	const [ending, unit] = ENDINGS.find(([end]) => own.endsWith(end) && own.length > end.length) ?? ['', ''];
	const bare = own.slice(0, own.length - ending.length);
	return { name: bare.replace(/([a-z0-9])([A-Z])/g, (_, before: string, after: string) => `${before} ${after.toLowerCase()}`), unit };
}

/**
 * Finite numbers of the data by name; in nested data by "outer.inner", in a printed text by "nameA", "nameA.2" with
 * their unit, in the order they stand there.
 */
export function numbersOf(data: unknown): Record<string, number> {
	const numbers: Record<string, number> = {};
	collect(data, '', numbers, 0);
	return numbers;
}

function collect(value: unknown, name: string, into: Record<string, number>, depth: number): void {
	if (typeof value === 'number') {
		if (Number.isFinite(value) && name !== '') into[name] = value;
	} else if (typeof value === 'string') {
		if (NAMES.test(name)) return;
		for (const [, sign, digits, unit, inches] of value.matchAll(PRINTED)) {
			const [figure, ending] = printed(sign, digits!, unit, inches);
			let key = `${name}${ending}`;
			for (let count = 2; Object.hasOwn(into, key); count++) key = `${name}${ending}.${count}`;
			into[key] = figure;
		}
	} else if (typeof value === 'object' && value !== null && depth < 3) {
		for (const [key, inner] of Object.entries(value)) collect(inner, name === '' ? key : `${name}.${key}`, into, depth + 1);
	}
}
