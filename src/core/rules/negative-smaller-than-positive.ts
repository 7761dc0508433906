import { areaMm2, gaugeText } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { onlyConductorAt } from './load-feed.ts';
import { conductorSubject, partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

export const negativeSmallerThanPositive = defineRuleForEach('loads', {
	meta: {
		id: 'negative-smaller-than-positive',
		title: 'The negative of a circuit is as thick as its positive',
		severity: 'warning',
		group: 'conductors',
		why: 'The same current goes through both; a later, larger fuse or load that suits the positive then overloads the negative.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		smaller: ({ negative, positive, load }: { negative: string; positive: string; load: string }) => ({
			message: `${capital(negative)} is the return of ${load}, whose positive is ${positive}.`,
			remedy: 'Use the same size for both.'
		})
	},

	/** Where the negative is too thin for the fuse as well, that is the fault and said by the rule on returns. */
	*checkOne(load, study) {
		const [positive, negative] = [onlyConductorAt(study, load.positive), onlyConductorAt(study, load.negative)];
		if (!positive || !negative || positive.pole !== 'positive' || negative.pole !== 'negative') return;
		if (!exceeds(areaMm2(positive.conductor.gauge), areaMm2(negative.conductor.gauge))) return;
		const limit = greatestDevice(study.profile, negative.ampacity, study.diagram.system.nominalV);
		if (exceeds(study.protection(negative.id).currentA, limit.currentA)) return;
		const words = ({ name, conductor }: typeof positive) => `${name} (${gaugeText(conductor.gauge)})`;
		yield {
			message: 'smaller',
			data: { negative: words(negative), positive: words(positive), load: partName(study.part(load.part)) },
			at: [conductorSubject(negative.id), conductorSubject(positive.id), partSubject(load.part)]
		};
	}
});
