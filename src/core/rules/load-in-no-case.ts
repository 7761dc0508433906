import { percentText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { standing } from './load-poles.ts';
import { numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

interface Data {
	readonly names: string;
	readonly one: boolean;
}

export const loadInNoCase = defineRule({
	meta: {
		id: 'load-in-no-case',
		title: 'Every load is on in some continuous case',
		severity: 'warning',
		group: 'documents',
		why: 'Currents, volts lost and fuse loads are those of the operating cases. A load that is on in none of them is drawn, and never reckoned with.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		never: ({ names, one }: Data) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} on in no continuous case: conductors, fuses and volts were checked as if ${one ? 'it' : 'they'} drew nothing.`,
			remedy: `Switch ${one ? 'it' : 'them'} on in a case, or add one for it; a surge is a start, not a use.`
		}),
		partly: ({ names, one }: Data) => ({
			message: `${capital(names)} ${one ? 'is' : 'are'} never on at full draw in a continuous case.`,
			remedy: 'Set the level to 100 % in the case in which the most is drawn; hours of use belong to the day, not to the cases.'
		})
	},

	/** One report for each kind. Starters run in surges only. */
	*check(study) {
		const loads = study.form.loads.filter(
			(load) => load.followsSource === null && numberOf(study.part(load.part), 'crankingA') === null && standing(study, load) === 'fed'
		);
		const levels = new Map(loads.map(({ part }) => [part, greatestLevel(study, part)]));
		const never = [...levels].filter(([, level]) => level === 0).map(([part]) => part);
		const partly = [...levels].filter(([, level]) => level !== null && level > 0 && exceeds(1, level)) as [string, number][];
		if (never.length > 0) {
			yield {
				message: 'never',
				data: { names: listed(never.map((id) => partName(study.part(id)))), one: never.length === 1 },
				at: subjects(never.map(partSubject))
			};
		}
		if (partly.length > 0) {
			yield {
				message: 'partly',
				severity: 'note',
				data: {
					names: listed(partly.map(([id, level]) => `${partName(study.part(id))} (${percentText(100 * level)} at most)`)),
					one: partly.length === 1
				},
				at: subjects(partly.map(([id]) => partSubject(id)))
			};
		}
	}
});

/** Of its rated draw, in continuous cases; null where the diagram has no case at all, which is said elsewhere. */
function greatestLevel({ cases }: Study, part: string): number | null {
	if (cases.length === 0) return null;
	const continuous = cases.filter(({ operatingCase }) => operatingCase.duration === 'continuous');
	return Math.max(0, ...continuous.map(({ operatingCase: { levels, loads } }) => (Object.hasOwn(levels, part) ? levels[part]! : loads)));
}
