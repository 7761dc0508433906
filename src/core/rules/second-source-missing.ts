import { defineRule } from './define.ts';
import { batteriesBehind, switchesOff } from './electronics-open.ts';
import { choiceOf, isSet } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const secondSourceMissing = defineRule({
	meta: {
		id: 'second-source-missing',
		title: 'What must not go dark outlives a battery that switches itself off',
		severity: 'warning',
		group: 'batteries',
		why: 'Battery electronics open without asking. Lights, alarm and radio then go out together, and seldom in fine weather.',
		source: { default: 'ABYC E-13, from memory; common practice' }
	},

	messages: {
		onlyOne: ({ loads, one, batteries }: { loads: string; one: boolean; batteries: string }) => ({
			message: `${capital(loads)} must not go dark, but ${one ? 'is' : 'are'} fed only by ${batteries}, whose electronics can switch off.`,
			remedy: `Feed ${one ? 'it' : 'them'} from a second battery as well that does not switch itself off, such as the start battery.`
		}),
		noWarning: ({ loads, one, batteries }: { loads: string; one: boolean; batteries: string }) => ({
			message: `${capital(batteries)} can switch off without a warning, and ${loads} ${one ? 'loses' : 'lose'} ${one ? 'its' : 'their'} main source.`,
			remedy: 'Use batteries that give a warning before they switch off, and lead it to where somebody hears it.'
		})
	},

	/** One report for all loads fed by the same batteries. */
	*check(study) {
		const marked = study.form.loads.filter(({ part }) => isSet(study.part(part), 'mustNotGoDark'));
		const groups = new Map<string, typeof marked>();
		for (const load of marked) {
			const key = batteriesBehind(study, load.positive)
				.map(({ part }) => part)
				.join();
			if (key !== '') groups.set(key, [...(groups.get(key) ?? []), load]);
		}
		for (const loads of groups.values()) {
			const behind = batteriesBehind(study, loads[0]!.positive);
			const opening = behind.filter((battery) => switchesOff(study, battery));
			const silent = opening.filter(({ part }) => choiceOf(study.part(part), 'warnsFirst') !== 'yes');
			const names = (ids: readonly { readonly part: string }[]) => listed([...new Set(ids.map(({ part }) => partName(study.part(part))))]);
			const at = (batteries: typeof behind) => subjects([...new Set([...loads, ...batteries].map(({ part }) => part))].map(partSubject));
			const data = (batteries: typeof behind) => ({ loads: names(loads), one: loads.length === 1, batteries: names(batteries) });
			if (opening.length === behind.length) yield { message: 'onlyOne', data: data(opening), at: at(opening), unverified: true };
			else if (silent.length > 0) yield { message: 'noWarning', severity: 'note', data: data(silent), at: at(silent), unverified: true };
		}
	}
});
