import { defineRule } from './define.ts';
import { choiceOf } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const breakerForAc = defineRule({
	meta: {
		id: 'breaker-for-ac',
		title: 'A breaker is made for direct current',
		severity: 'error',
		group: 'protection',
		why: 'Alternating current goes through zero a hundred times a second and puts its own arc out; direct current does not, and burns the breaker.',
		source: { default: 'UL 489 and IEC 60947-2: ratings for direct current are given apart' }
	},

	messages: {
		ac: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} made for alternating current only.`,
			remedy: 'Use a breaker with a rating for direct current at this voltage, or a fuse.'
		})
	},

	*check({ parts }) {
		const wrong = parts.filter((part) => choiceOf(part, 'madeFor') === 'ac');
		if (wrong.length === 0) return;
		const data = { names: listed(wrong.map(partName)), one: wrong.length === 1 };
		yield { message: 'ac', data, at: subjects(wrong.map(({ id }) => partSubject(id))) };
	}
});
