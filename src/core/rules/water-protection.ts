import { defineRule } from './define.ts';
import { choiceOf, isIn } from './params.ts';
import type { PartView } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** Least second figure of the IP code, by place: common practice, no source. */
const NEEDED = {
	wet: { words: 'in spray or rain', least: 'IP x4', enough: ['splashes', 'jets', 'immersion'] },
	flooded: { words: 'where water may stand', least: 'IP x7', enough: ['immersion'] }
} as const;

export const waterProtection = defineRule({
	meta: {
		id: 'water-protection',
		title: 'What stands in the wet is made for it',
		severity: 'warning',
		group: 'protection',
		why: 'Water makes a path between studs: first the copper goes green, then the joint heats, then current leaks to the hull.',
		source: { default: 'degrees of protection by IEC 60529; which one is asked for is common practice, no source' }
	},

	messages: {
		tooLittle: ({ names, one, place, least }: { names: string; one: boolean; place: string; least: string }) => ({
			message: `${capital(names)} ${one ? 'stands' : 'stand'} ${place}; ${least} is asked for there, and ${one ? 'it is' : 'they are'} not said to have it.`,
			remedy: `Use ${one ? 'one' : 'ones'} of at least ${least}, or a housing that has it.`
		})
	},

	/** One report for each of the two places. */
	*check(study) {
		for (const space of ['wet', 'flooded'] as const) {
			const { words, least, enough } = NEEDED[space];
			const isDryMade = (part: PartView) => !(enough as readonly string[]).includes(choiceOf(part, 'water'));
			const bare = study.parts.filter((part) => isIn(study, part.id, space) && isDryMade(part));
			if (bare.length === 0) continue;
			yield {
				message: 'tooLittle',
				data: { names: listed(bare.map(partName)), one: bare.length === 1, place: words, least },
				at: subjects(bare.map(({ id }) => partSubject(id)))
			};
		}
	}
});
