import { compactNumber, voltsText } from '#core/units';
import type { BatteryBranch } from '#core/network';
import { banksOf, batteriesOf } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { groupBy } from './group-by.ts';
import { numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const blocksNotMatched = defineRule({
	meta: {
		id: 'blocks-not-matched',
		title: 'Batteries of one bank are alike',
		severity: 'warning',
		group: 'batteries',
		why: 'Unlike batteries charge and discharge unlike: one is overcharged or drained by the other, and both fail early.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		chemistry: ({ kinds }: { kinds: string }) => ({
			message: `One bank holds batteries of different chemistry: ${kinds}. What charges one fully over- or undercharges the other.`,
			remedy: 'Use one chemistry in a bank, or part the banks and join them through a DC-DC charger.'
		}),
		voltage: ({ kinds }: { kinds: string }) => ({
			message: `One string is made of batteries of different voltage: ${kinds}.`,
			remedy: 'Build a string of batteries of one kind.'
		}),
		capacity: ({ kinds }: { kinds: string }) => ({
			message: `${capital(kinds)} stand in one string: the smallest is empty first and is then charged the wrong way round by the others.`,
			remedy: 'Use batteries of the same capacity, maker and age in a string.'
		}),
		age: ({ kinds }: { kinds: string }) => ({
			message: `One bank holds batteries built more than a year apart: ${kinds}.`,
			remedy: 'Replace all batteries of a bank together.'
		})
	},

	/** One report for each bank or string, about the gravest difference. */
	*check(study) {
		for (const bank of banksOf(study).banks) {
			const batteries = batteriesOf(bank);
			const at = () => subjects(batteries.map(({ part }) => partSubject(part)));
			const chemistries = kindsOf(study, batteries, ({ part }) => chemistryOf(study, part));
			if (chemistries) {
				yield { message: 'chemistry', severity: 'error', data: { kinds: chemistries }, at: at() };
				continue;
			}
			for (const string of bank.strings) {
				const inString = subjects(string.batteries.map(({ part }) => partSubject(part)));
				const voltages = kindsOf(study, string.batteries, ({ part }) => voltsText(Number(study.part(part).params['nominalV'])));
				const capacities = kindsOf(study, string.batteries, ({ capacityAh }) => `${compactNumber(capacityAh)} Ah`);
				if (voltages) yield { message: 'voltage', severity: 'error', data: { kinds: voltages }, at: inString };
				else if (capacities) yield { message: 'capacity', data: { kinds: capacities }, at: inString };
			}
			yield* agesOf(study, batteries);
		}
	}
});

/** Built more than this apart, years: common practice, no source. */
const APART_YEARS = 1;

function* agesOf(study: Study, batteries: readonly BatteryBranch[]) {
	const built = batteries.flatMap(({ part }) => {
		const year = numberOf(study.part(part), 'built');
		return year === null ? [] : [{ part, year }];
	});
	const years = built.map(({ year }) => year);
	const apart = Math.max(...years) - Math.min(...years);
	if (built.length < 2 || !exceeds(apart, APART_YEARS)) return;
	yield {
		message: 'age' as const,
		data: { kinds: listed(built.map(({ part, year }) => `${partName(study.part(part))} in ${year}`)) },
		at: subjects(batteries.map(({ part }) => partSubject(part)))
	};
}

/** "B1 100 Ah and B2 120 Ah", each kind's batteries together; null when all are of one kind. */
function kindsOf(study: Study, batteries: readonly BatteryBranch[], kindOf: (battery: BatteryBranch) => string): string | null {
	const kinds = groupBy(batteries, kindOf);
	if (kinds.size < 2) return null;
	return listed([...kinds].map(([kind, alike]) => `${listed(alike.map(({ part }) => partName(study.part(part))))} ${kind}`));
}

const chemistryOf = (study: Study, part: string): string => String(study.part(part).params['chemistry']).replaceAll('-', ' ');
