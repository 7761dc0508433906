import { gaugeText } from '#core/conductors';
import { ampsText, metresText } from '#core/units';
import { alsoText, amperageSource, largestRatingA, lengthAssumptions, limitedByText, sources } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { endKey, otherEnd } from './device-free.ts';
import { overcurrentFaults } from './overcurrent.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly openEnd: string;
	readonly otherEnd: string;
	/** What feeds the open end; null when nothing limits it. */
	readonly fedBy: string | null;
	readonly otherFedBy: string;
	readonly limitA: number;
	readonly ratingA: number;
	readonly allowedM: number;
	readonly also: string;
}

export const twoSourceConductor = defineRule({
	meta: {
		id: 'two-source-conductor',
		title: 'A conductor with a source at each end is protected at each end',
		severity: 'error',
		group: 'protection',
		why: 'Two batteries, or a battery and a charger, feed a fault from both sides. A fuse at one end leaves the other side free to burn it.',
		source: { 'us-small-craft': '33 CFR 183.455(a), (b): at each source of power', default: 'common practice, no source' }
	},

	messages: {
		oneEnd: ({ name, gauge, openEnd, otherEnd, fedBy, otherFedBy, limitA, ratingA, allowedM, also }: Data) => ({
			message: `${capital(name)} (${gauge}) can be fed from both ends. At ${otherEnd} the current is limited by ${otherFedBy}, at ${openEnd} ${fedBy === null ? 'by nothing' : `only by ${fedBy}, more than the ${ampsText(limitA)} allowed`}.${also}`,
			remedy: `Fit a fuse or breaker of at most ${ampsText(ratingA)} within ${metresText(allowedM)} of ${openEnd} as well${fedBy === null ? '' : `, or limit what comes from there to ${ampsText(ratingA)}`}.`
		})
	},

	*check(study) {
		for (const { kind, view, limit, end, letThrough, opposite, run, alike } of overcurrentFaults(study)) {
			if (kind !== 'two-source') continue;
			const parts = [...new Set(opposite.limitedBy.map(({ part }) => part))];
			yield {
				message: 'oneEnd',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					openEnd: study.studName(run.way.length > 0 ? run.origin : endKey(view, end)),
					otherEnd: study.studName(endKey(view, otherEnd(end))),
					fedBy: letThrough.currentA === Infinity ? null : limitedByText(study, letThrough),
					otherFedBy: limitedByText(study, opposite),
					limitA: limit.currentA,
					ratingA: largestRatingA(limit.currentA),
					allowedM: run.allowed.value,
					also: alsoText(study, alike)
				},
				at: subjects([conductorSubject(view.id), ...parts.map(partSubject), ...alike.map(conductorSubject)]),
				source: sources(this.meta.source[study.profile.basedOn] ?? this.meta.source.default, limit.source, amperageSource(view.ampacity)),
				unverified: view.ampacity.unverified || limit.unverified || run.allowed.confidence === 'memory',
				assumptions: lengthAssumptions([view, ...run.way.map(study.conductor)])
			};
		}
	}
});
