/** Lines no wider than `widthMm`, broken at spaces and after hyphens and slashes, and inside a word only where it alone is too wide. */
export function wrap(text: string, widthMm: number, measure: (text: string) => number): string[] {
	return text.split(/\r?\n/).flatMap((paragraph) => wrapLine(paragraph, widthMm, measure));
}

function wrapLine(text: string, widthMm: number, measure: (text: string) => number): string[] {
	if (measure(text) <= widthMm) return [text];
	const lines: string[] = [];
	let line = '';
	for (const piece of pieces(text)) {
		if (measure((line + piece).trimEnd()) <= widthMm) {
			line += piece;
			continue;
		}
		if (line.trim() !== '') lines.push(line.trimEnd());
		line = piece;
		while (measure(line.trimEnd()) > widthMm && line.length > 1) {
			const fits = longestFitting(line, widthMm, measure);
			lines.push(line.slice(0, fits));
			line = line.slice(fits);
		}
	}
	if (line.trim() !== '') lines.push(line.trimEnd());
	return lines;
}

/** Words with the space after them; long words may break after a hyphen or slash. */
function pieces(text: string): string[] {
	const split = text.match(/[^\s/-]*(?:[/-]+|\s+|$)/g)?.filter((piece) => piece !== '') ?? [];
	const joined: string[] = [];
	for (const piece of split) {
		if (UNIT.test(piece) && /\d $/.test(joined.at(-1) ?? '')) joined[joined.length - 1] += piece;
		else joined.push(piece);
	}
	return joined;
}

/** Stays with the number before it. */
const UNIT = /^(AWG|mm²?|m|A|kA|V|mV|W|Ah|N·m|lbf·in|ms|s|%|°C)(?![\p{L}\d])/u;

/** Widest of the pieces that a line never breaks inside. */
export const widestPiece = (text: string, measure: (text: string) => number): number =>
	pieces(text.replaceAll('\n', ' ')).reduce((widest, piece) => Math.max(widest, measure(piece.trimEnd())), 0);

function longestFitting(text: string, widthMm: number, measure: (text: string) => number): number {
	let fits = 1;
	while (fits < text.length && measure(text.slice(0, fits + 1)) <= widthMm) fits += 1;
	return fits;
}
