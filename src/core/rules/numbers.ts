/** The figures a report is made of. Rules hand figures to their messages as numbers or already printed. */

/** Names of printed data that say which thing is meant, not how much of something there is. */
const NAMES = /name|case|label|device|remedy|source|thicker|gauge$/i;

/** A figure as the messages print it: number, space, unit. */
const PRINTED = /(?<![\w.])(\d+(?:\.\d+)?) (kA|A|mV|V|mΩ|Ω|kW|W|Ah|Wh|%|mm²|mm|m|ms|s|°C|N·m)(?![\w])/gu;

/** To the unit without a prefix, so that 990 A and 1.01 kA are close. */
const SCALE: Readonly<Record<string, number>> = { kA: 1000, mV: 1e-3, mΩ: 1e-3, kW: 1000, ms: 1e-3 };

/**
 * Finite numbers of the data by name; in nested data by "outer.inner", in a printed text by "name.1", "name.2" in the
 * order they stand there.
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
		for (const [index, [, figure, unit]] of [...value.matchAll(PRINTED)].entries())
			into[`${name}.${index + 1}`] = Number(figure) * (SCALE[unit!] ?? 1);
	} else if (typeof value === 'object' && value !== null && depth < 3) {
		for (const [key, inner] of Object.entries(value)) collect(inner, name === '' ? key : `${name}.${key}`, into, depth + 1);
	}
}
