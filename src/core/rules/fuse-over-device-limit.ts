import { ampsText } from '#core/units';
import { exceeds, limitedByText } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { feedOf } from './load-feed.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, partName } from './words.ts';

export const fuseOverDeviceLimit = defineRule({
	meta: {
		id: 'fuse-over-device-limit',
		title: 'A device is fused within the limit of its instructions',
		severity: 'error',
		group: 'protection',
		why: 'The device’s own wiring is thinner than its feed: a fuse right for the conductor lets it burn inside.',
		source: { default: 'the largest fuse given for the device, from its instructions' }
	},

	messages: {
		over: ({ name, devices, limitA }: { name: string; devices: string; limitA: number }) => ({
			message: `${capital(name)} may stand behind at most ${ampsText(limitA)} and is fed through ${devices}.`,
			remedy: `Fit ${ampsText(limitA)} or less, or add an inline fuse of that rating at the device.`
		})
	},

	/** Where nothing limits the current at all, a missing fuse is the fault. */
	*check(study) {
		for (const load of study.form.loads) {
			const { maxFuseA } = study.part(load.part).params;
			if (typeof maxFuseA !== 'number') continue;
			const letThrough = feedOf(study, load)?.letThrough;
			if (!letThrough || letThrough.currentA === Infinity || !exceeds(letThrough.currentA, maxFuseA)) continue;
			yield {
				message: 'over',
				data: { name: partName(study.part(load.part)), devices: limitedByText(study, letThrough), limitA: maxFuseA },
				at: subjects([load.part, ...new Set(letThrough.limitedBy.map(({ part }) => part))].map(partSubject))
			};
		}
	}
});
