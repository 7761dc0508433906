import { areaMm2, gaugeText } from '#core/conductors';
import { AWG_SIZES, type Gauge } from '#core/diagram';
import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { greatest } from './extremes.ts';
import { groupBy } from './group-by.ts';
import { choiceOf, numberOf } from './params.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const holderLimit = defineRule({
	meta: {
		id: 'holder-limit',
		title: 'A fuse and its conductors fit their holder',
		severity: 'warning',
		group: 'protection',
		why: 'A holder filled to more than it is made for melts around a fuse that is perfectly sound.',
		source: { default: 'the limits given for the part' }
	},

	messages: {
		fuse: ({ names, one, largestA, limitA }: { names: string; one: boolean; largestA: number; limitA: number }) => ({
			message: `${capital(names)} ${one ? 'holds a fuse' : 'hold fuses'} of up to ${ampsText(largestA)}; the holder is made for ${ampsText(limitA)}.`,
			remedy: 'Fit a smaller fuse, or use a larger holder.'
		}),
		conductor: ({ name, conductors, gauge, limit }: { name: string; conductors: string; gauge: string; limit: string }) => ({
			message: `${capital(conductors)} (${gauge}) ${conductors.includes(' and ') ? 'end' : 'ends'} in ${name}, which takes conductors up to ${limit}.`,
			remedy: 'Use a holder for that size. Never cut strands away to make a conductor fit.'
		})
	},

	*check(study) {
		const devices = groupBy(devicesOf(study), ({ origin }) => origin.part);
		for (const part of study.parts) {
			const limitA = numberOf(part, 'holderA') ?? numberOf(part, 'wayRatedA') ?? numberOf(part, 'positionRatedA');
			if (limitA !== null) {
				const over = (devices.get(part.id) ?? []).filter(({ device }) => exceeds(device.ratingA, limitA));
				if (over.length > 0) {
					const largestA = Math.max(...over.map(({ device }) => device.ratingA));
					const names = listed(over.map(({ origin }) => deviceName(study, origin)));
					yield { message: 'fuse', data: { names, one: over.length === 1, largestA, limitA }, at: [partSubject(part.id)] };
				}
			}
			const size = choiceOf(part, 'holderGauge') as (typeof AWG_SIZES)[number];
			if (!AWG_SIZES.includes(size)) continue;
			const limit: Gauge = { system: 'awg', size };
			const thick = study.conductors.filter(
				({ conductor: { from, to, gauge } }) => (from.part === part.id || to.part === part.id) && exceeds(areaMm2(gauge), areaMm2(limit))
			);
			if (thick.length === 0) continue;
			const thickest = greatest(thick, ({ conductor }) => areaMm2(conductor.gauge))!;
			yield {
				message: 'conductor',
				data: {
					name: partName(part),
					conductors: listed(thick.map(({ name }) => name)),
					gauge: gaugeText(thickest.conductor.gauge),
					limit: gaugeText(limit)
				},
				at: subjects([partSubject(part.id), ...thick.map(({ id }) => conductorSubject(id))])
			};
		}
	}
});
