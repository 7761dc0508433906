import { gaugeText } from '#core/conductors';
import { AWG_SIZES, type Gauge } from '#core/diagram';
import { greatestDevice } from '#core/profiles';
import { ampsText } from '#core/units';
import { amperageAs } from './amperage.ts';
import { amperageSource, exceeds, largestRatingA, limitedByText } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { feedOf } from './load-feed.ts';
import { choiceOf } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, partName } from './words.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly leadsA: number;
	readonly devices: string;
	readonly limitA: number;
	readonly ratingA: number;
}

export const ownLeads = defineRule({
	meta: {
		id: 'own-leads',
		title: 'A device’s own leads stand its fuse',
		severity: 'warning',
		group: 'protection',
		why: 'The thin leads a lamp comes with are the weakest conductor of the circuit: a fuse chosen for the cable leaves them to burn.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		thin: ({ name, gauge, leadsA, devices, limitA, ratingA }: Data) => ({
			message: `${capital(name)} has leads of ${gauge} (${ampsText(leadsA)}) behind ${devices}; at most ${ampsText(limitA)} is allowed for them.`,
			remedy: `Fit at most ${ampsText(ratingA)}, or a small fuse where its leads begin.`
		})
	},

	/** Leads are taken to have the insulation and the place of the conductor that feeds them. An unlimited feed is another rule’s. */
	*check(study) {
		const { nominalV } = study.diagram.system;
		for (const load of study.form.loads) {
			const size = choiceOf(study.part(load.part), 'ownLeads') as (typeof AWG_SIZES)[number];
			const feed = AWG_SIZES.includes(size) ? feedOf(study, load) : null;
			if (!feed || feed.letThrough.currentA === Infinity) continue;
			const gauge: Gauge = { system: 'awg', size };
			const ampacity = amperageAs(study, feed.view, { gauge });
			const limit = greatestDevice(study.profile, ampacity, nominalV);
			if (!exceeds(feed.letThrough.currentA, limit.currentA)) continue;
			const devices = [...new Set(feed.letThrough.limitedBy.map(({ part }) => part))];
			yield {
				message: 'thin',
				data: {
					name: partName(study.part(load.part)),
					gauge: gaugeText(gauge),
					leadsA: ampacity.currentA,
					devices: limitedByText(study, feed.letThrough),
					limitA: limit.currentA,
					ratingA: largestRatingA(limit.currentA)
				},
				at: subjects([load.part, ...devices].map(partSubject)),
				source: `${limit.source}; ${amperageSource(ampacity)}`,
				unverified: ampacity.unverified || limit.unverified
			};
		}
	}
});
