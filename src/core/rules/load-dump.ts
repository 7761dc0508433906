import { banksOf } from './banks.ts';
import { defineRule } from './define.ts';
import { switchesOff } from './electronics-open.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const loadDump = defineRule({
	meta: {
		id: 'load-dump',
		title: 'An alternator keeps a battery that does not switch itself off',
		severity: 'error',
		group: 'batteries',
		why: 'A battery that opens under charge leaves the alternator with nowhere to push: its voltage jumps, and takes its own diodes and whatever is on with it.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		opens: ({ name, batteries }: { name: string; batteries: string }) => ({
			message: `${capital(name)} charges ${batteries} and no other battery: when the electronics there open while it runs, nothing takes its current.`,
			remedy: 'Keep a start battery without such electronics on the alternator for good, and charge this bank through a DC-DC charger.'
		}),
		switched: ({ name, batteries }: { name: string; batteries: string }) => ({
			message: `${capital(name)} reaches ${batteries} only through a switch or relay: opened while it runs, nothing takes its current.`,
			remedy: 'Lead the alternator to a battery without a switch between, with a fuse at the battery.'
		})
	},

	/** Alternators are the sources driven by an engine: those with a hot output to give. */
	*check(study) {
		const { metalOf } = banksOf(study);
		const { form, nets, part } = study;
		for (const source of form.sources) {
			if (!('hotA' in part(source.part).params)) continue;
			const reached = form.batteries.filter(({ positive }) => nets.of(positive) === nets.of(source.positive));
			if (reached.length === 0) continue;
			const kept = reached.filter(({ positive }) => metalOf(positive) === metalOf(source.positive));
			if (kept.some((battery) => !switchesOff(study, battery))) continue;
			const name = partName(part(source.part));
			const words = (batteries: typeof reached) => ({ name, batteries: listed(batteries.map((battery) => partName(part(battery.part)))) });
			const at = (batteries: typeof reached) => subjects([source, ...batteries].map((item) => partSubject(item.part)));
			if (reached.every((battery) => switchesOff(study, battery))) yield { message: 'opens', data: words(reached), at: at(reached) };
			else yield { message: 'switched', severity: 'warning', data: words(reached), at: at(reached) };
		}
	}
});
