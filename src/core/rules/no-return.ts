import { defineRule } from './define.ts';
import { standing } from './load-poles.ts';
import { partSubject, subjects } from './subjects.ts';
import type { Study } from './study.ts';
import { capital, listed, partName } from './words.ts';

export const noReturn = defineRule({
	meta: {
		id: 'no-return',
		title: 'Every load has a way back to the negative of its source',
		severity: 'error',
		group: 'topology',
		why: 'Current finds its way back through whatever metal it can, or the load does not work. Chassis and hull are not a return.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		open: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'has' : 'have'} a positive feed, but no conductor leads from ${one ? 'its' : 'their'} negative back to a source.`,
			remedy: 'Add a negative conductor to the nearest negative bus with a free stud.'
		}),
		bothPositive: ({ names, one }: { names: string; one: boolean }) => ({
			message: `Both terminals of ${names} are on the positive pole, so ${one ? 'it does' : 'they do'} not work.`,
			remedy: 'Move the negative conductor to a negative bus.'
		})
	},

	*check(study) {
		yield* report(study, 'no-return', 'open');
		yield* report(study, 'both-positive', 'bothPositive');
	}
});

/** One report for all loads whose negatives hang on the same metal: one conductor is missing, not one each. */
function* report(study: Study, wanted: 'no-return' | 'both-positive', message: 'open' | 'bothPositive') {
	const byNet = new Map<number, Set<string>>();
	for (const load of study.form.loads) {
		if (standing(study, load) !== wanted) continue;
		const net = study.nets.of(load.negative);
		byNet.set(net, (byNet.get(net) ?? new Set()).add(load.part));
	}
	for (const parts of byNet.values()) {
		const names = listed([...parts].map((id) => partName(study.part(id))));
		yield { message, data: { names, one: parts.size === 1 }, at: subjects([...parts].map(partSubject)) };
	}
}
