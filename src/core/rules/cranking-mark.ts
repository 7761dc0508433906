import type { ConductorId } from '#core/diagram';
import type { NodeIndex } from '#core/network';
import { defineRule } from './define.ts';
import type { Study } from './study.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

export const crankingMark = defineRule({
	meta: {
		id: 'cranking-mark',
		title: 'Only the conductors between battery and starter count as cranking',
		severity: 'error',
		group: 'protection',
		why: 'A cranking conductor may go without a fuse because nothing else hangs on it. The mark on another conductor hides that it has none.',
		source: { default: '33 CFR 183.455(e); common practice elsewhere' }
	},

	messages: {
		elsewhere: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} marked as cranking, but ${one ? 'does' : 'do'} not lie between a battery and a starter motor: ${one ? 'its' : 'their'} protection is not checked.`,
			remedy: `Set the use of ${one ? 'this conductor' : 'these conductors'} to ordinary, and fit the fuse that is then asked for.`
		})
	},

	/** One report for all of them. */
	*check(study) {
		const marked = study.conductors.filter(({ conductor }) => conductor.use === 'cranking');
		if (marked.length === 0) return;
		const ways = crankingWays(study);
		const wrong = marked.filter(({ id }) => !ways.has(id));
		if (wrong.length === 0) return;
		const data = { names: listed(wrong.map(({ name }) => name)), one: wrong.length === 1 };
		yield { message: 'elsewhere', data, at: subjects(wrong.map(({ id }) => conductorSubject(id))) };
	}
});

/**
 * Conductors on a way from a battery’s post to a starter’s terminal of the same pole over switches, bars and
 * conductors only. A conductor is on such a way when, taken out, one of its ends still reaches a post and the other a
 * starter.
 */
function crankingWays({ form, part, conductors }: Study): Set<ConductorId> {
	const starters = form.loads.filter((load) => 'crankingA' in part(load.part).params);
	const reach = (starts: readonly NodeIndex[], without: number): Set<NodeIndex> => {
		const seen = new Set(starts);
		for (const node of seen) {
			for (const index of form.branchesAt[node]!) {
				const { a, b, device } = form.branches[index]!;
				if (index !== without && !device) seen.add(a === node ? b : a);
			}
		}
		return seen;
	};
	const ways = new Set<ConductorId>();
	for (const { id, branch, conductor } of conductors) {
		if (conductor.use !== 'cranking') continue;
		for (const pole of ['positive', 'negative'] as const) {
			const posts = reach(
				form.batteries.map((battery) => battery[pole]),
				branch.index
			);
			const motors = reach(
				starters.map((starter) => starter[pole]),
				branch.index
			);
			const { a, b } = branch;
			if ((posts.has(a) && motors.has(b)) || (posts.has(b) && motors.has(a))) ways.add(id);
		}
	}
	return ways;
}
