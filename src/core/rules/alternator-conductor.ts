import { gaugeText } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import { ampsText } from '#core/units';
import { amperageSource, amperageText, exceeds, gaugeForCurrent } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { onlyConductorAt } from './load-feed.ts';
import { conductorSubject, partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly amperage: string;
	readonly alternator: string;
	readonly ratedA: number;
	readonly thicker: string | null;
}

export const alternatorConductor = defineRule({
	meta: {
		id: 'alternator-conductor',
		title: 'The output conductor of an alternator carries its rated output',
		severity: 'error',
		group: 'conductors',
		why: 'With an empty bank it delivers all it has for an hour, in the hottest place there is.',
		source: { 'us-small-craft': '33 CFR 183.460, from memory', default: 'common practice, no source' }
	},

	messages: {
		thin: ({ name, gauge, amperage, alternator, ratedA, thicker }: Data) => ({
			message: `${capital(name)} (${gauge}, ${amperage}) leads from ${alternator}, which delivers up to ${ampsText(ratedA)}.`,
			remedy: `Use ${thicker ? `at least ${thicker}` : 'a second conductor'} for ${name} and for its return.`
		})
	},

	/** Where a case shows the overload, or its fuse is too large for it as well, that is said by the rules on those. */
	*check(study) {
		for (const source of study.form.sources) {
			if (!('hotA' in study.part(source.part).params)) continue;
			const view = onlyConductorAt(study, source.positive);
			if (!view || !exceeds(source.maxA, view.ampacity.currentA) || exceeds(view.continuous.currentA, view.ampacity.currentA)) continue;
			const limit = greatestDevice(study.profile, view.ampacity, study.diagram.system.nominalV);
			if (exceeds(study.protection(view.id).currentA, limit.currentA)) continue;
			yield {
				message: 'thin',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					amperage: amperageText(view.ampacity),
					alternator: partName(study.part(source.part)),
					ratedA: source.maxA,
					thicker: gaugeForCurrent(study, view, source.maxA)
				},
				at: [conductorSubject(view.id), partSubject(source.part)],
				source: amperageSource(view.ampacity),
				unverified: view.ampacity.unverified
			};
		}
	}
});
