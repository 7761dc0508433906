import { metresText } from '#core/units';
import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { listed } from './words.ts';

/** Longer than any run in a craft or cabin of this size: common practice, no source. */
const LONG_M = 30;

export const lengthDoubt = defineRule({
	meta: {
		id: 'length-doubt',
		title: 'Lengths are in metres',
		severity: 'note',
		group: 'documents',
		why: 'A length typed in feet or centimetres makes every drop, share and fault current on its circuit wrong.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		long: ({ names, longestM, mostM }: { names: string; longestM: number; mostM: number }) => ({
			message: `Longer than ${metresText(mostM)}, up to ${metresText(longestM)}: ${names}.`,
			remedy: 'Check that the length is in metres, one way.'
		})
	},

	*check({ conductors }) {
		const long = conductors.filter(({ lengthM, lengthAssumed }) => !lengthAssumed && lengthM > LONG_M);
		if (long.length === 0) return;
		yield {
			message: 'long',
			data: { names: listed(long.map(({ name }) => name)), longestM: Math.max(...long.map(({ lengthM }) => lengthM)), mostM: LONG_M },
			at: subjects(long.map(({ id }) => conductorSubject(id)))
		};
	}
});
