import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** Kinds with mains on the other side. */
const WITH_AC: readonly string[] = ['inverter', 'mains-charger'];

export const acSideNotChecked = defineRule({
	meta: {
		id: 'ac-side-not-checked',
		title: 'Mains wiring is checked by someone competent for it',
		severity: 'note',
		group: 'documents',
		why: 'Mains voltage kills. Neutral-earth bond, residual-current protection and inlet are not drawn here and not looked at.',
		source: {
			caravan: 'IEC 60364-7-721',
			'rv-nec-552': 'NFPA 70 Article 551',
			'abyc-e11': 'ABYC E-11, AC systems',
			'metric-small-craft': 'ISO 13297, AC systems',
			default: 'IEC 60364-7-721 and -709, NFPA 70 Article 551'
		}
	},

	messages: {
		present: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'has' : 'have'} an AC side. The AC side, neutral-earth bond, residual-current protection and inlet are not checked.`,
			remedy: 'Have the AC side checked by someone competent for it.'
		})
	},

	*check({ parts }) {
		const found = parts.filter(({ definition }) => definition !== null && WITH_AC.includes(definition.kind));
		if (found.length === 0) return;
		yield {
			message: 'present',
			data: { names: listed(found.map(partName)), one: found.length === 1 },
			at: subjects(found.map(({ id }) => partSubject(id)))
		};
	}
});
