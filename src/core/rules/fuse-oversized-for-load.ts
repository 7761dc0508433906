import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { loadsByDevice } from './load-feed.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** How many times the load a fuse may be: common practice, no source. */
const CONTINUOUS_TIMES = 3;
const SURGE_TIMES = 1.5;

/** Nothing smaller is worth a smaller fuse: common practice, no source. */
const LEAST_FUSE_A = 5;

export const fuseOversizedForLoad = defineRule({
	meta: {
		id: 'fuse-oversized-for-load',
		title: 'A fuse fits what it feeds',
		severity: 'note',
		group: 'protection',
		why: 'The conductor is safe, but a stalled motor or a failing device draws many times its current before the fuse takes notice.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		large: ({ device, ratingA, names, currentA }: { device: string; ratingA: number; names: string; currentA: number }) => ({
			message: `${capital(device)} is ${ampsText(ratingA)}, more than three times the ${ampsText(currentA)} that ${names} draws at most.`,
			remedy: 'A smaller fuse protects the equipment better.'
		})
	},

	*check(study) {
		const solved = study.cases.filter(({ point }) => point.status === 'solved');
		for (const { device, loads } of loadsByDevice(study).values()) {
			if (device.currentA <= LEAST_FUSE_A) continue;
			const drawn = (duration: 'continuous' | 'surge') =>
				Math.max(
					0,
					...solved
						.filter(({ operatingCase }) => operatingCase.duration === duration)
						.map(({ point }) => loads.reduce((sum, { index }) => sum + point.loadA[index]!, 0))
				);
			const [continuousA, surgeA] = [drawn('continuous'), drawn('surge')];
			if (continuousA <= 0 || !exceeds(device.currentA, CONTINUOUS_TIMES * continuousA) || !exceeds(device.currentA, SURGE_TIMES * surgeA))
				continue;
			const parts = [...new Set(loads.map(({ part }) => part))];
			yield {
				message: 'large',
				data: {
					device: deviceName(study, device),
					ratingA: device.currentA,
					names: listed(parts.map((part) => partName(study.part(part)))),
					currentA: continuousA
				},
				at: subjects([device.part, ...parts].map(partSubject))
			};
		}
	}
});
