import type { LoadBranch } from '#core/network';
import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { groupBy } from './group-by.ts';
import { loadsByDevice } from './load-feed.ts';
import { partSubject, subjects } from './subjects.ts';
import { listed, partName } from './words.ts';

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
		large: ({ fuses, one }: { fuses: string; one: boolean }) => ({
			message: `More than three times what ${one ? 'it feeds draws' : 'they feed draws'} at most: ${fuses}.`,
			remedy: `${one ? 'A smaller fuse protects' : 'Smaller fuses protect'} the equipment better.`
		})
	},

	/** One report for each part with fuses. */
	*check(study) {
		const solved = study.cases.filter(({ point }) => point.status === 'solved');
		const drawnA = (loads: readonly LoadBranch[], duration: 'continuous' | 'surge') =>
			Math.max(
				0,
				...solved
					.filter(({ operatingCase }) => operatingCase.duration === duration)
					.map(({ point }) => loads.reduce((sum, { index }) => sum + point.loadA[index]!, 0))
			);
		const large = [...loadsByDevice(study).values()].filter(({ device, loads }) => {
			if (device.currentA <= LEAST_FUSE_A) return false;
			const continuousA = drawnA(loads, 'continuous');
			return (
				continuousA > 0 &&
				exceeds(device.currentA, CONTINUOUS_TIMES * continuousA) &&
				exceeds(device.currentA, SURGE_TIMES * drawnA(loads, 'surge'))
			);
		});
		for (const [part, fuses] of groupBy(large, ({ device }) => device.part)) {
			const texts = fuses.map(({ device, loads }) => {
				const names = listed([...new Set(loads.map((load) => partName(study.part(load.part))))]);
				return `${deviceName(study, device)} ${ampsText(device.currentA)} (${names} ${ampsText(drawnA(loads, 'continuous'))})`;
			});
			yield {
				message: 'large',
				data: { fuses: listed(texts), one: fuses.length === 1 },
				at: subjects([part, ...new Set(fuses.flatMap(({ loads }) => loads.map((load) => load.part)))].map(partSubject))
			};
		}
	}
});
