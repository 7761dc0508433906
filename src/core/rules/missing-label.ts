import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';

/** Amps under which a missing label is only a note: common practice, no source. */
const LITTLE_A = 1;

export const missingLabel = defineRule({
	meta: {
		id: 'missing-label',
		title: 'Every conductor has a label',
		severity: 'warning',
		group: 'documents',
		why: 'A conductor without a label cannot be found on the drawing by whoever stands in front of it.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		missing: ({ count, first }: { count: number; first: string }) => ({
			message: count === 1 ? `The ${first} has no label.` : `${count} conductors have no label, among them the ${first}.`,
			remedy: 'Give each a designation and print it at both ends of the conductor.'
		})
	},

	*check({ conductors }) {
		const bare = conductors.filter(({ conductor }) => conductor.label.trim() === '');
		if (bare.length === 0) return;
		const heaviest = Math.max(...bare.map(({ surge }) => surge.currentA));
		yield {
			message: 'missing',
			data: { count: bare.length, first: bare[0]!.name.replace('unlabelled ', '') },
			at: subjects(bare.map(({ id }) => conductorSubject(id))),
			severity: exceeds(heaviest, LITTLE_A) ? 'warning' : 'note'
		};
	}
});
