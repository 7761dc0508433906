import { voltsText } from '#core/units';
import { arraysOf, arrayText } from './arrays.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { numberOf } from './params.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

/** A module in the sun on a roof in summer, above the 25 °C of its label: common practice, no source. */
const ABOVE_TEST_C = 45;
/** Voltage at greatest power lost per degree where nothing is given: common practice, no source. */
const USUAL_LOSS = 0.004;
/** A controller needs some volts above the battery to charge at all: common practice, no source. */
const ROOM_V = 5;

export const arrayVoltageHot = defineRule({
	meta: {
		id: 'array-voltage-hot',
		title: 'An array still charges when it is hot',
		severity: 'warning',
		group: 'batteries',
		why: 'Hot modules give fewer volts. Too short a string stops charging at noon in summer, just when there is most sun.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		low: ({ name, array, arrayV, neededV }: { name: string; array: string; arrayV: number; neededV: number }) => ({
			message: `In the heat the array of ${name} (${array}) gives ${voltsText(arrayV)}; ${name} needs ${voltsText(neededV)} to charge.`,
			remedy: 'Put more modules in series, as far as the cold allows, or use a controller that works from less.'
		})
	},

	*check(study) {
		for (const array of arraysOf(study)) {
			if (array.vmpV === null) continue;
			const arrayV = array.inSeries * array.vmpV * (1 - (array.lossPerC ?? USUAL_LOSS) * ABOVE_TEST_C);
			const neededV = numberOf(array.view, 'minPvV') ?? (numberOf(array.view, 'setV') ?? 0) + ROOM_V;
			if (!exceeds(neededV, arrayV)) continue;
			const data = { name: partName(array.view), array: arrayText(array), arrayV, neededV };
			yield { message: 'low', data, at: [partSubject(array.view.id)] };
		}
	}
});
