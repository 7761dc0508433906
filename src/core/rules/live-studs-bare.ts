import { defineRule } from './define.ts';
import { choiceOf } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const liveStudsBare = defineRule({
	meta: {
		id: 'live-studs-bare',
		title: 'Live studs are covered',
		severity: 'error',
		group: 'studs',
		why: 'A dropped spanner from a live stud to metal is a dead short through the hand that reaches for it.',
		source: { 'us-small-craft': '33 CFR 183.445(b)', default: 'common practice, no source' }
	},

	messages: {
		bare: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'has' : 'have'} bare studs on the positive pole within reach.`,
			remedy: 'Put boots on the studs, or a cover over the part.'
		})
	},

	/** One report for all parts said to be bare. */
	*check({ parts, form }) {
		const bare = parts.filter(
			(part) =>
				choiceOf(part, 'liveStuds') === 'bare' &&
				part.terminals.some(({ id, kind }) => kind === 'stud' && isPositive(form.nodeOf.get(`${part.id}.${id}`)))
		);
		if (bare.length === 0) return;
		yield {
			message: 'bare',
			data: { names: listed(bare.map(partName)), one: bare.length === 1 },
			at: subjects(bare.map(({ id }) => partSubject(id)))
		};

		function isPositive(node: number | undefined): boolean {
			return node !== undefined && form.poles[node] === 'positive';
		}
	}
});
