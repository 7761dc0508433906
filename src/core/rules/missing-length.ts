import { ASSUMED_LENGTH_M } from '#core/network';
import { metresText } from '#core/units';
import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { listed } from './words.ts';

/** Share of lengths assumed above which the whole check is doubtful, in a diagram of some size: common practice, no source. */
const MANY_SHARE = 0.2;
const MANY_FROM = 10;

export const missingLength = defineRule({
	meta: {
		id: 'missing-length',
		title: 'Every conductor has a measured length',
		severity: 'note',
		group: 'documents',
		why: 'Voltage drop, currents shared between strings and the distance to the fuse all depend on length.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		missing: ({ names, one, assumedM }: { names: string; one: boolean; assumedM: number }) => ({
			message: `No length is given for ${names}.`,
			remedy: `Measure along the way the conductor will run, one way, and enter it. Until then ${metresText(assumedM)} is taken for ${one ? 'it' : 'each'}.`
		})
	},

	/** A warning once more than a fifth of all lengths is assumed: then no figure can be trusted. */
	*check({ conductors }) {
		const assumed = conductors.filter(({ lengthAssumed }) => lengthAssumed);
		if (assumed.length === 0) return;
		yield {
			message: 'missing',
			severity: assumed.length > MANY_SHARE * conductors.length && conductors.length >= MANY_FROM ? 'warning' : 'note',
			data: { names: listed(assumed.map(({ name }) => name)), one: assumed.length === 1, assumedM: ASSUMED_LENGTH_M },
			at: subjects(assumed.map(({ id }) => conductorSubject(id)))
		};
	}
});
