import { ampsText, voltsText } from '#core/units';
import { batteryMismatch } from './clashing-batteries.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** Share of the system voltage under which strings exchange charge without danger: common practice, no source. */
const SLIGHT_SHARE = 0.1;

export const unequalVoltageParallel = defineRule({
	meta: {
		id: 'unequal-voltage-parallel',
		title: 'Strings in parallel have the same voltage',
		severity: 'fatal',
		group: 'topology',
		why: 'Two strings of different voltage joined together pour their charge into each other, limited by nothing but the leads.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		unequal: ({ names, excessV, currentA }: { names: string; excessV: number; currentA: number }) => ({
			message: `${capital(names)} form a loop whose voltages differ by ${voltsText(excessV)}: ${ampsText(currentA)} flows with everything switched off.`,
			remedy: 'Put the same number of equal batteries in series in every string, or join the strings through a converter.'
		})
	},

	*check(study) {
		const { clashes, reversed } = batteryMismatch(study);
		if (reversed) return;
		for (const { battery, loop, excessV } of clashes) {
			const parts = [...new Set(loop.map(({ part }) => part))];
			yield {
				message: 'unequal',
				data: {
					names: listed(parts.map((id) => partName(study.part(id)))),
					excessV: Math.abs(excessV),
					currentA: Math.abs(study.atRest.batteryA[battery.index]!)
				},
				at: subjects(parts.map(partSubject)),
				severity: exceeds(Math.abs(excessV), SLIGHT_SHARE * study.diagram.system.nominalV) ? 'fatal' : 'warning'
			};
		}
	}
});
