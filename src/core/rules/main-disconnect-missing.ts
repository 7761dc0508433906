import { unionFind } from '#core/network';
import { banksOf, batteriesOf } from './banks.ts';
import { defineRule } from './define.ts';
import { bankName } from './string-paths-unequal.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

export const mainDisconnectMissing = defineRule({
	meta: {
		id: 'main-disconnect-missing',
		title: 'A bank can be switched off',
		severity: 'warning',
		group: 'protection',
		why: 'In a fire, a flood or a repair there must be one handle that ends the current.',
		source: { default: 'common practice, no source; 46 CFR 120.380(i) asks for an emergency switch on passenger vessels' }
	},

	messages: {
		missing: ({ bank }: { bank: string }) => ({
			message: `Nothing that ${capital(bank)} feeds lies behind a switch or breaker: the bank cannot be switched off.`,
			remedy: 'Put a battery disconnect into the positive main conductor, after the battery fuse and within reach.'
		})
	},

	/** One report for each bank that feeds loads, none of them behind a switch or breaker in either pole. */
	*check(study) {
		const { form, nets } = study;
		const metal = unionFind(form.nodeCount);
		for (const { a, b, switchedBy } of form.branches) if (switchedBy === null) metal.union(a, b);
		for (const bank of banksOf(study).banks) {
			const [string] = bank.strings;
			const [bottom, top] = [string!.batteries[0]!.negative, string!.batteries.at(-1)!.positive];
			const fed = form.loads.filter(
				({ positive, negative }) => nets.of(positive) === nets.of(top) && nets.of(negative) === nets.of(bottom)
			);
			const isSwitched = fed.some(({ positive, negative }) => !metal.same(positive, top) || !metal.same(negative, bottom));
			if (fed.length === 0 || isSwitched) continue;
			yield {
				message: 'missing',
				data: { bank: bankName(study, bank) },
				at: subjects(batteriesOf(bank).map(({ part }) => partSubject(part)))
			};
		}
	}
});
