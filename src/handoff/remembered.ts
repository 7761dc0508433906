import type { Measure } from './page.ts';

/** Keeps widths of texts measured before; tables ask for the same ones over and over. */
export function remembered(measure: Measure): Measure {
	const known = new Map<string, number>();
	return (text, sizeMm, bold = false) => {
		const key = `${bold ? 'b' : 'n'}${text}`;
		let perMm = known.get(key);
		if (perMm === undefined) known.set(key, (perMm = measure(text, 1, bold)));
		return perMm * sizeMm;
	};
}
