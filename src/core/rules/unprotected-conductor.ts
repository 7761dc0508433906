import { gaugeText } from '#core/conductors';
import type { StudKey } from '#core/diagram';
import { ampsText, metresText } from '#core/units';
import { alsoText, amperageSource, exceeds, largestRatingA, lengthAssumptions, sources } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { overcurrentFaults } from './overcurrent.ts';
import type { Study } from './study.ts';
import { conductorSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

/** Above this short-circuit current, on more than this length, a fault sets fire at once: common practice, no source. */
const FATAL_A = 5000;
const FATAL_M = 1;

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly origin: string;
	readonly also: string;
	readonly ratingA: number;
	readonly allowedM: number;
}

export const unprotectedConductor = defineRule({
	meta: {
		id: 'unprotected-conductor',
		title: 'Every positive conductor is protected by a fuse or breaker at its source',
		severity: 'error',
		group: 'protection',
		why: 'A battery drives thousands of amps into a fault. Without a fuse nothing stops it before the conductor glows.',
		source: {
			'us-small-craft': '33 CFR 183.455(a), (b) and 183.460(a)',
			default: 'common practice, no source'
		}
	},

	messages: {
		unprotected: ({ name, gauge, origin, also, ratingA, allowedM }: Data) => ({
			message: `${capital(name)} (${gauge}) is fed from ${origin} with no fuse or breaker between: nothing limits the current into a fault on it.${also}`,
			remedy: `Fit a fuse or breaker of at most ${ampsText(ratingA)} within ${metresText(allowedM)} of ${origin}, measured along the conductor.`
		})
	},

	*check(study) {
		for (const { kind, view, limit, run, alike } of overcurrentFaults(study)) {
			if (kind !== 'unprotected') continue;
			yield {
				message: 'unprotected',
				severity: isDeadly(study, run.origin, run.upstreamM + view.lengthM) ? 'fatal' : 'error',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					origin: study.studName(run.origin),
					also: alsoText(study, alike),
					ratingA: largestRatingA(limit.currentA),
					allowedM: run.allowed.value
				},
				at: subjects([view.id, ...alike].map(conductorSubject)),
				source: sources(this.meta.source[study.profile.basedOn] ?? this.meta.source.default, limit.source, amperageSource(view.ampacity)),
				unverified: view.ampacity.unverified || limit.unverified || run.allowed.confidence === 'memory',
				assumptions: lengthAssumptions([view, ...run.way.map(study.conductor)])
			};
		}
	}
});

/** @param lengthM without a fuse, from the origin to the conductor's far end */
function isDeadly({ form, faults }: Study, origin: StudKey, lengthM: number): boolean {
	const node = form.nodeOf.get(origin);
	const currentA = node === undefined ? 0 : (faults.short(node, 'greatest')?.currentA ?? 0);
	return exceeds(currentA, FATAL_A) && exceeds(lengthM, FATAL_M);
}
