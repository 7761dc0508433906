import type { OperatingCase } from '#core/diagram';
import type { LoadBranch } from '#core/network';
import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { groupBy } from './group-by.ts';
import { loadsByDevice } from './load-feed.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { ofForm } from './watch.ts';
import { listed, partName } from './words.ts';

/** How many times the load a fuse may be: common practice, no source. */
const CONTINUOUS_TIMES = 3;
const SURGE_TIMES = 1.5;

/** Nothing smaller is worth a smaller fuse: common practice, no source. */
const LEAST_FUSE_A = 5;

const fusesByPart = ofForm((study) =>
	[...groupBy([...loadsByDevice(study).values()], ({ device }) => device.part)].map(([part, fuses]) => ({ part, fuses }))
);

export const fuseOversizedForLoad = defineRuleForEach(fusesByPart, {
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
	*checkOne({ part, fuses }, study) {
		const large = fuses.filter(({ device, loads }) => {
			if (device.currentA <= LEAST_FUSE_A) return false;
			const continuousA = drawnA(study, loads, 'continuous');
			return (
				continuousA > 0 &&
				exceeds(device.currentA, CONTINUOUS_TIMES * continuousA) &&
				exceeds(device.currentA, SURGE_TIMES * drawnA(study, loads, 'surge'))
			);
		});
		if (large.length === 0) return;
		const texts = large.map(({ device, loads }) => {
			const names = listed([...new Set(loads.map((load) => partName(study.part(load.part))))]);
			return `${deviceName(study, device)} ${ampsText(device.currentA)} (${names} ${ampsText(drawnA(study, loads, 'continuous'))})`;
		});
		yield {
			message: 'large',
			data: { fuses: listed(texts), one: large.length === 1 },
			at: subjects([part, ...new Set(large.flatMap(({ loads }) => loads.map((load) => load.part)))].map(partSubject))
		};
	}
});

/** Most that loads draw together in any case of a duration. */
function drawnA({ diagram, loadA }: Study, loads: readonly LoadBranch[], duration: OperatingCase['duration']): number {
	const byCase = loads.map(({ index }) => loadA(index));
	let mostA = 0;
	for (const [place, { caseId }] of (byCase[0] ?? []).entries()) {
		if (diagram.cases[caseId]!.duration === duration)
			mostA = Math.max(
				mostA,
				byCase.reduce((sum, drawn) => sum + drawn[place]!.amps, 0)
			);
	}
	return mostA;
}
