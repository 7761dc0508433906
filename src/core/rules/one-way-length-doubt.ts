import { metresText } from '#core/units';
import { chassisNodes } from './chassis.ts';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { onlyConductorAt } from './load-feed.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

/** How far two lengths of a pair may differ: common practice, no source. */
const RATIO = 1.3;
const LEAST_M = 0.5;

export const oneWayLengthDoubt = defineRuleForEach('loads', {
	meta: {
		id: 'one-way-length-doubt',
		title: 'Lengths are entered one way, for each conductor',
		severity: 'note',
		group: 'documents',
		why: 'A length entered there and back doubles the voltage drop on paper; one left too short hides it.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		differ: ({ load, longer, longerM, shorter, shorterM }: Data) => ({
			message: `${capital(longer)} to ${load} is ${metresText(longerM)} long, ${shorter} ${metresText(shorterM)}; one of them may be the length there and back.`,
			remedy: 'Enter the length of each conductor, measured once along its run.'
		})
	},

	/** One report for each load whose two conductors differ by more than 30 % and half a metre. A way through the chassis has no length. */
	*checkOne(load, study) {
		const nodes = chassisNodes(study);
		const [positive, negative] = [onlyConductorAt(study, load.positive), onlyConductorAt(study, load.negative)];
		if (!positive || !negative || nodes.has(negative.branch.a) || nodes.has(negative.branch.b)) return;
		if (positive.lengthAssumed || negative.lengthAssumed) return;
		if (!endsRun(study, positive, load.part) || !endsRun(study, negative, load.part)) return;
		const [longer, shorter] = positive.lengthM > negative.lengthM ? [positive, negative] : [negative, positive];
		if (!exceeds(longer.lengthM, RATIO * shorter.lengthM) || !exceeds(longer.lengthM - shorter.lengthM, LEAST_M)) return;
		yield {
			message: 'differ',
			data: {
				load: partName(study.part(load.part)),
				longer: longer.name,
				longerM: longer.lengthM,
				shorter: shorter.name,
				shorterM: shorter.lengthM
			},
			at: [conductorSubject(longer.id), conductorSubject(shorter.id), partSubject(load.part)]
		};
	}
});

/** Its other end is on a battery, bus or panel: a switch or inline fuse would only divide the run. */
function endsRun({ part }: Study, { conductor: { from, to } }: ConductorView, load: string): boolean {
	const group = part(from.part === load ? to.part : from.part).definition?.group;
	return group === 'sources' || group === 'distribution';
}

interface Data {
	readonly load: string;
	readonly longer: string;
	readonly longerM: number;
	readonly shorter: string;
	readonly shorterM: number;
}
