/** Links and terminals of devices with an input and an output: DC-DC chargers and converters. */
import type { DailyYield, Link, Terminal } from './define.ts';
import { amount, choice, flag, optionalAmount, share, thread } from './fields.ts';
import { stud } from './terminals.ts';

/** Negatives joined inside the case: a few centimetres of copper. Common practice, no source. */
const COMMON_NEGATIVE_OHM = 0.001;

export const converterFields = (standard: { maxA: number; setV: number; efficiency: number }) => ({
	maxA: amount('Rated output', 'A', standard.maxA, { max: 2000 }),
	setV: amount('Output voltage', 'V', standard.setV, { max: 100 }),
	efficiency: share('Efficiency', standard.efficiency),
	isolated: flag('Isolated', false, { hint: 'input and output negatives are separate' }),
	inputFrom: choice('Input is fed', 'drawing', { drawing: 'from this drawing', outside: 'from outside it, not drawn' }),
	blocksReverse: flag('Blocks reverse current', true, { hint: 'a fault on the input side cannot be fed from the output' }),
	minInputV: optionalAmount('Input works down to', 'V', { max: 100, whenEmpty: 'not known' }),
	thread: thread('Stud thread', 'M6')
});

interface Converter {
	readonly maxA: number;
	readonly setV: number;
	readonly efficiency: number;
	readonly isolated: boolean;
	readonly inputFrom: 'drawing' | 'outside';
	readonly blocksReverse: boolean;
}

export function converterLinks(converter: Converter, alwaysOn: boolean, daily?: DailyYield): Link[] {
	const { maxA, setV, efficiency, blocksReverse } = converter;
	const isFedHere = converter.inputFrom === 'drawing';
	const input: Link = {
		kind: 'load',
		id: 'input',
		positive: 'in-pos',
		negative: 'in-neg',
		draw: { kind: 'power', watts: (maxA * setV) / efficiency },
		followsSource: 'output',
		reversible: false,
		critical: false
	};
	const output: Link = {
		kind: 'source',
		id: 'output',
		positive: 'out-pos',
		negative: 'out-neg',
		maxA,
		setV,
		fedBy: isFedHere ? 'input' : null,
		efficiency,
		blocksReverse,
		alwaysOn,
		...(daily ? { daily } : {})
	};
	const commonNegative: Link = {
		kind: 'segment',
		id: 'common-negative',
		between: ['in-neg', 'out-neg'],
		resistanceOhm: COMMON_NEGATIVE_OHM,
		ratedA: null
	};
	return [...(isFedHere ? [input] : []), output, ...(converter.isolated ? [] : [commonNegative])];
}

/** Four studs along the lower edge: input on the left, output on the right. */
export function converterTerminals(
	converter: { thread: Terminal['thread'] & string; maxA: number },
	widthMm: number,
	y: number
): Terminal[] {
	const at = (share: number) => ({ x: share * widthMm, y });
	const printed = (words: string, share: number) => ({
		thread: converter.thread,
		maxTerminals: 2,
		print: { text: words, at: { x: share * widthMm, y: y - 23 } }
	});
	return [
		stud('in-pos', 'input +', at(-0.375), 'south', { ...printed('IN +', -0.375), role: 'positive' }),
		stud('in-neg', 'input −', at(-0.125), 'south', { ...printed('IN −', -0.125), role: 'negative' }),
		stud('out-neg', 'output −', at(0.125), 'south', { ...printed('OUT −', 0.125), role: 'negative', ratedA: converter.maxA }),
		stud('out-pos', 'output +', at(0.375), 'south', { ...printed('OUT +', 0.375), role: 'positive', ratedA: converter.maxA })
	];
}
