/** Where the thread left on a stud comes from: its length less everything that sits on it. */
import type { StudKey } from '#core/diagram';
import type { Study } from '#core/rules';
import { isHardware } from '#core/studs';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';

export function explainThreadLeft(study: Study, key: StudKey): Explanation | null {
	const stack = study.stack(key);
	const usableLengthMm = stack?.terminal.usableLengthMm ?? null;
	if (!stack || stack.threadLeftMm === null || usableLengthMm === null) return null;
	const { terminal, layers, threadLeftMm } = stack;
	const hardware = terminal.thread?.startsWith('M')
		? 'nut ISO 4032, washer ISO 7089, spring washer DIN 127'
		: 'nut ASME B18.2.2, washers ASME B18.21.1, partly from memory';
	const under = layers.slice(0, layers.findLastIndex(({ item }) => item.kind === 'nut') + 1);
	const inputs = under.map(({ item, label, thicknessMm }, index) =>
		input(`d${index + 1}`, label, thicknessMm, 'mm', {
			origin: 'table',
			source: isHardware(item) ? hardware : 'usual size of such a terminal: common practice, no source',
			confidence: 'common-practice'
		})
	);
	return explanation({
		symbol: 'T',
		name: `Thread left on ${study.studName(key)}`,
		value: threadLeftMm,
		unit: 'mm',
		words: `The stud’s usable length less everything on it, its nut included${stack.hardwareAssumed ? '; washers and nut are assumed where none are drawn' : ''}.`,
		expression: ['S', ...inputs.map(({ symbol }) => symbol)].join(' - '),
		inputs: [
			input('S', 'usable length, from the seat to the end of the thread', usableLengthMm, 'mm', {
				origin: 'diagram',
				source: 'the part on the drawing, or usual for its thread',
				confidence: 'common-practice'
			}),
			...inputs
		],
		source: 'common practice, no source: a turn or two of thread shows over the nut'
	});
}
