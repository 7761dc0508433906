import { defineRule } from './define.ts';
import { groupBy } from './group-by.ts';
import { isSet } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const signalNegatives = defineRule({
	meta: {
		id: 'signal-negatives',
		title: 'Negatives of devices that share signals are tied together',
		severity: 'error',
		group: 'topology',
		why: 'With the negatives apart, the return current finds the screen of a data or aerial lead, which was never meant to carry it.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		apart: ({ names, groups }: { names: string; groups: number }) => ({
			message: `${capital(names)} share signals, but their negatives end on ${groups} networks that no conductor joins.`,
			remedy: 'Join the negatives with one conductor, as thick as the thickest of them, or use isolated signal connections.'
		})
	},

	/** One report for all devices marked as sharing signals. */
	*check({ form, nets, part }) {
		const sharing = form.loads.filter((load) => isSet(part(load.part), 'signals'));
		const groups = groupBy(sharing, ({ negative }) => nets.of(negative));
		if (groups.size < 2) return;
		const firsts = [...groups.values()].map(([first]) => first!.part);
		yield {
			message: 'apart',
			data: { names: listed(firsts.map((id) => partName(part(id)))), groups: groups.size },
			at: subjects(firsts.map(partSubject))
		};
	}
});
