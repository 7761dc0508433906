import { areaMm2, areaText, gaugeText, thinnestGauge } from '#core/conductors';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

/** Tails shorter than this are left to the device they belong to: 33 CFR 183.425(g), 7 in; ISO 10133:2012 7.7, 200 mm. */
const TAIL_M = { us: 0.1778, metric: 0.2 } as const;

/** 33 CFR 183.425(g) exempts electronic circuits that draw less; whether it is one cannot be seen from the diagram. */
const ELECTRONICS_A = 1;

export const conductorBelowMinimum = defineRule({
	meta: {
		id: 'conductor-below-minimum',
		title: 'A conductor is thick enough to last',
		severity: 'error',
		group: 'conductors',
		why: 'Very thin conductors break at their terminals by vibration long before they are overloaded.',
		source: { default: 'the smallest size of the profile' }
	},

	messages: {
		thin: ({ names, gauge, leastLabel, thinnest, sheathed, one }: Data) => ({
			message: `${capital(names)} (${gauge}) ${one ? 'is' : 'are'} thinner than the ${leastLabel} asked for ${sheathed ? 'in a sheath' : 'of a conductor on its own'}.`,
			remedy: `Use at least ${thinnest}${sheathed ? '' : ', or run it in a sheath with others'}.`
		})
	},

	/** One report for all of one size and kind of run. */
	*check({ conductors, profile }) {
		const { smallestSeparateMm2, smallestSheathedMm2 } = profile;
		const tailM = profile.basedOn === 'us-small-craft' || profile.basedOn === 'abyc-e11' ? TAIL_M.us : TAIL_M.metric;
		const groups = new Map<string, (typeof conductors)[number][]>();
		for (const view of conductors) {
			const { gauge, sheathed } = view.conductor;
			const smallest = sheathed ? smallestSheathedMm2 : smallestSeparateMm2;
			if (view.lengthM <= tailM || !exceeds(smallest.value, areaMm2(gauge))) continue;
			const key = `${gaugeText(gauge)} ${sheathed}`;
			groups.set(key, [...(groups.get(key) ?? []), view]);
		}
		for (const views of groups.values()) {
			const { gauge, sheathed } = views[0]!.conductor;
			const smallest = sheathed ? smallestSheathedMm2 : smallestSeparateMm2;
			const enough = thinnestGauge(gauge, (other) => !exceeds(smallest.value, areaMm2(other)))!;
			yield {
				message: 'thin',
				severity: views.every(({ surge }) => exceeds(ELECTRONICS_A, surge.currentA)) ? 'warning' : 'error',
				data: {
					names: listed(views.map(({ name }) => name)),
					gauge: gaugeText(gauge),
					leastLabel: areaText(smallest.value),
					thinnest: gaugeText(enough),
					sheathed,
					one: views.length === 1
				},
				at: subjects(views.map(({ id }) => conductorSubject(id))),
				source: smallest.source,
				unverified: smallest.confidence === 'memory'
			};
		}
	}
});

interface Data {
	readonly names: string;
	readonly gauge: string;
	readonly leastLabel: string;
	readonly thinnest: string;
	readonly sheathed: boolean;
	readonly one: boolean;
}
