import { areaMm2, gaugeText } from '#core/conductors';
import { banksOf, type BankMetal, type BatteryString } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest, least } from './extremes.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { stringName } from './string-paths-unequal.ts';
import { capital, listed } from './words.ts';

interface Data {
	readonly names: string;
	readonly one: boolean;
	readonly string: string;
	readonly gauge: string;
	readonly lead: string;
}

export const interlinkThin = defineRule({
	meta: {
		id: 'interlink-thin',
		title: 'Links inside a string are as thick as its leads',
		severity: 'warning',
		group: 'batteries',
		why: 'All the current of a string passes its links, and no fuse is thought of for them.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		thin: ({ names, one, string, gauge, lead }: Data) => ({
			message: `${capital(names)} (${gauge}) ${one ? 'links' : 'link'} the batteries of ${string}, whose leads are ${lead}.`,
			remedy: `Use ${lead} between the batteries too.`
		})
	},

	/** One report for each string. A link over its amperage is said by the rule on that. */
	*check(study) {
		const { banks, metalOf } = banksOf(study);
		for (const string of banks.flatMap(({ strings }) => strings)) {
			if (string.batteries.length < 2) continue;
			const links = linksOf(study, string, metalOf);
			const lead = thickest(leadsOf(study, string));
			const thin = links.filter(
				({ conductor, continuous, ampacity }) =>
					lead !== null &&
					exceeds(areaMm2(lead.conductor.gauge), areaMm2(conductor.gauge)) &&
					!exceeds(continuous.currentA, ampacity.currentA)
			);
			if (thin.length === 0 || !lead) continue;
			const thinnest = least(thin, ({ conductor }) => areaMm2(conductor.gauge))!;
			yield {
				message: 'thin',
				data: {
					names: listed(thin.map(({ name }) => name)),
					one: thin.length === 1,
					string: stringName(study, string),
					gauge: gaugeText(thinnest.conductor.gauge),
					lead: gaugeText(lead.conductor.gauge)
				},
				at: subjects([...thin, lead].map(({ id }) => conductorSubject(id)))
			};
		}
	}
});

/** Conductors on the metal between two batteries of the string. */
function linksOf({ conductors }: Study, { batteries }: BatteryString, metalOf: (node: number) => BankMetal): ConductorView[] {
	const between = new Set(batteries.slice(1).map(({ negative }) => metalOf(negative)));
	const posts = new Set(batteries.flatMap(({ positive, negative }) => [positive, negative]));
	return conductors.filter(({ branch: { a, b } }) => between.has(metalOf(a)) && posts.has(a) && posts.has(b));
}

/** Conductors on its two outer posts. */
const leadsOf = ({ conductors }: Study, { batteries }: BatteryString): ConductorView[] => {
	const outer = new Set([batteries[0]!.negative, batteries.at(-1)!.positive]);
	return conductors.filter(({ branch: { a, b } }) => outer.has(a) || outer.has(b));
};

const thickest = (views: readonly ConductorView[]): ConductorView | null =>
	greatest(views, ({ conductor }) => areaMm2(conductor.gauge)) ?? null;
