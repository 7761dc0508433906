import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const switchInNegative = defineRule({
	meta: {
		id: 'switch-in-negative',
		title: 'The battery switch of a bonded system is in the positive',
		severity: 'error',
		group: 'protection',
		why: 'With the negative bonded, a switch in the negative leaves every positive conductor live: a fault to chassis still has its return.',
		source: {
			'us-small-craft': '46 CFR 120.380(b)',
			'abyc-e11': '46 CFR 120.380(b)',
			default: 'common practice, no source; 46 CFR 120.380(b) for passenger vessels'
		}
	},

	messages: {
		negative: ({ names }: { names: string }) => ({
			message: `${capital(names)} switches the negative only: with it open, everything positive stays live against the chassis.`,
			remedy: 'Put the switch into the positive conductor, after the battery fuse.'
		})
	},

	*check({ diagram, form, part }) {
		if (diagram.system.negative !== 'bonded') return;
		const switches = form.branches.flatMap((branch) =>
			branch.kind === 'switch' && branch.origin.kind === 'link' ? [{ part: branch.origin.part, pole: form.poles[branch.a]! }] : []
		);
		if (switches.some(({ part: id, pole }) => pole === 'positive' && part(id).definition?.group === 'protection')) return;
		const negative = [...new Set(switches.filter(({ pole }) => pole === 'negative').map(({ part: id }) => id))];
		if (negative.length === 0) return;
		yield {
			message: 'negative',
			data: { names: listed(negative.map((id) => partName(part(id)))) },
			at: subjects(negative.map(partSubject))
		};
	}
});
