import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

const CONTACT = { switch: 'contact', shunt: 'resistor' } as const;

/** A shunt's own heat lowers what it may carry for hours: common practice, no source. */
const SHUNT_SHARE = 2 / 3;

export const deviceOverloaded = defineRule({
	meta: {
		id: 'device-overloaded',
		title: 'Switches, relays and shunts carry no more than their rating',
		severity: 'error',
		group: 'conductors',
		why: 'A contact over its rating heats until it welds or melts its case; a shunt over its rating drifts and then opens.',
		source: { default: 'the rating given for the part' }
	},

	messages: {
		overloaded: ({ name, what, currentA, ratedA }: { name: string; what: string; currentA: number; ratedA: number }) => ({
			message: `${capital(name)} is rated ${ampsText(ratedA)} and its ${what} carries ${ampsText(currentA)} continuously.`,
			remedy: 'Use one of a higher rating, or less load.'
		}),
		warm: ({ name, currentA, ratedA }: { name: string; currentA: number; ratedA: number }) => ({
			message: `${capital(name)}, a shunt rated ${ampsText(ratedA)}, carries ${ampsText(currentA)} continuously, more than two thirds of its rating.`,
			remedy: 'Use a shunt of a higher rating.'
		})
	},

	*check(study) {
		for (const { index, kind, ratedA, origin } of study.form.branches) {
			if ((kind !== 'switch' && kind !== 'shunt') || ratedA === null || origin.kind !== 'link') continue;
			const { currentA, caseId } = study.branchCurrent(index);
			const name = partName(study.part(origin.part));
			const at = [partSubject(origin.part)] as const;
			if (exceeds(currentA, ratedA)) {
				yield { message: 'overloaded', data: { name, what: CONTACT[kind], currentA, ratedA }, at, caseId };
			} else if (kind === 'shunt' && exceeds(currentA, SHUNT_SHARE * ratedA)) {
				yield { message: 'warm', data: { name, currentA, ratedA }, at, caseId, severity: 'warning', source: 'common practice, no source' };
			}
		}
	}
});
