import { celsiusText, voltsText } from '#core/units';
import { arraysOf, arrayText, coldVolts } from './arrays.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { numberOf } from './params.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

/** A controller this near its limit has no room for a colder night: common practice, no source. */
const CLOSE = 0.95;

interface Data {
	readonly name: string;
	readonly array: string;
	readonly arrayV: number;
	readonly coldestC: number;
	readonly limitV: number;
	readonly most: number;
}

export const arrayVoltageCold = defineRule({
	meta: {
		id: 'array-voltage-cold',
		title: 'An array keeps below its controller’s voltage on the coldest morning',
		severity: 'error',
		group: 'batteries',
		why: 'Modules give more volts the colder they are. The first clear sunrise of a frost destroys a controller that was fine all summer.',
		source: { default: 'NFPA 70 690.7; IEC 62548' }
	},

	messages: {
		over: ({ name, array, arrayV, coldestC, limitV, most }: Data) => ({
			message: `The array of ${name} (${array}) reaches ${voltsText(arrayV)} at ${celsiusText(coldestC)}; ${name} takes ${voltsText(limitV)}.`,
			remedy:
				most === 0
					? 'Use a controller for a higher array voltage, or other modules.'
					: `Put at most ${most} in series, or use a controller for a higher array voltage.`
		}),
		close: ({ name, array, arrayV, coldestC, limitV }: Data) => ({
			message: `The array of ${name} (${array}) reaches ${voltsText(arrayV)} at ${celsiusText(coldestC)}, close to the ${voltsText(limitV)} that ${name} takes.`,
			remedy: 'Make sure that it never gets colder there, or put one module fewer in series.'
		})
	},

	*check(study) {
		for (const array of arraysOf(study)) {
			const limitV = numberOf(array.view, 'maxPvV')!;
			const cold = coldVolts(array);
			if (!cold || !exceeds(cold.value, CLOSE * limitV)) continue;
			const isOver = exceeds(cold.value, limitV);
			yield {
				message: isOver ? 'over' : 'close',
				severity: isOver ? 'error' : 'warning',
				data: {
					name: partName(array.view),
					array: arrayText(array),
					arrayV: cold.value,
					coldestC: array.coldestC!,
					limitV,
					most: Math.floor((limitV * array.inSeries) / cold.value)
				},
				at: [partSubject(array.view.id)],
				source: `${this.meta.source.default}; ${cold.source}`,
				unverified: cold.confidence === 'memory'
			};
		}
	}
});
