/** Formulas written out. What is shown is made from the expression itself, so the two cannot differ. */
import type { Confidence } from '#core/tables';
import {
	ampsText,
	celsiusText,
	compactNumber,
	metresText,
	millimetresText,
	ohmsText,
	percentText,
	reader,
	roundedText,
	voltsText
} from '#core/units';
import type { Explanation, Input } from './explanation.ts';

/** Most certain first. */
const CERTAINTY: readonly Confidence[] = ['two-sources', 'verified', 'derived', 'given', 'common-practice', 'memory'];

export function valueText(value: number, unit: string): string {
	if (value === Infinity) return 'unlimited';
	if (unit === 'A') return ampsText(value);
	if (unit === 'V') return voltsText(value);
	if (unit === 'Ω') return ohmsText(value);
	if (unit === 'm') return `${roundedText(value, 2)} m`;
	if (unit === '%') return percentText(value);
	return unit === '' ? compactNumber(value) : `${compactNumber(value)} ${unit}`;
}

/** The same for a reader: formulas are worked in SI units, whose lengths and temperatures are repeated in the reader's. */
function readText(value: number, unit: string): string {
	const si = valueText(value, unit);
	const { long, short, temperature } = reader();
	if (unit === 'm' && long === 'ft') return `${si} (${metresText(value)})`;
	if (unit === 'mm' && short === 'in') return `${si} (${millimetresText(value)})`;
	return unit === '°C' && temperature === '°F' ? `${si} (${celsiusText(value)})` : si;
}

/** An input; `text` is its value with the unit unless given. */
export const input = (
	symbol: string,
	name: string,
	value: number,
	unit: string,
	rest: Pick<Input, 'origin' | 'source'> & Partial<Pick<Input, 'text' | 'confidence' | 'figure'>>
): Input => ({ symbol, name, value, unit, text: readText(value, unit), confidence: 'derived', figure: null, ...rest });

type Given = Pick<Explanation, 'name' | 'value' | 'unit' | 'words' | 'expression' | 'inputs' | 'source'> &
	Partial<Pick<Explanation, 'caseName' | 'table' | 'row' | 'related' | 'text'>> & { readonly symbol: string };

export function explanation({ symbol, ...given }: Given): Explanation {
	const { value, unit, expression, inputs } = given;
	const text = given.text ?? (value === null ? '' : readText(value, unit));
	return {
		caseName: null,
		table: null,
		row: null,
		related: [],
		...given,
		text,
		formula: expression === '' ? '' : `${symbol} = ${pretty(expression)}`,
		substituted: expression === '' ? '' : `${substitute(expression, inputs)} = ${text}`,
		confidence: inputs.reduce<Confidence>((worst, { confidence }) => lessCertain(worst, confidence), 'two-sources'),
		isAssumed: inputs.some(({ origin }) => origin === 'assumed')
	};
}

const lessCertain = (a: Confidence, b: Confidence): Confidence => (CERTAINTY.indexOf(b) > CERTAINTY.indexOf(a) ? b : a);

const pretty = (expression: string): string =>
	expression
		.replace(/\babs\(([^()]*)\)/g, '|$1|')
		.replace(/ \^ 2/g, '²')
		.replace(/ \* /g, ' × ')
		.replace(/ \/ /g, ' ÷ ')
		.replace(/ - /g, ' − ');

function substitute(expression: string, inputs: readonly Input[]): string {
	const texts = new Map(inputs.map(({ symbol, value, unit }) => [symbol, plain(value, unit)]));
	return pretty(expression).replace(/\b[A-Za-z]\w*/g, (word) => texts.get(word) ?? word);
}

/** A value inside a formula: negative ones in brackets. Volts keep their digits, since small differences of them matter. */
function plain(value: number, unit: string): string {
	const text = unit === 'V' ? `${compactNumber(value, 5)} V` : valueText(value, unit);
	return value < 0 ? `(${text.replace('-', '−')})` : text;
}
