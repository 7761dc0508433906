import { banksOf, batteriesOf, caseName, continuousCases, worstCase } from './banks.ts';
import { overText, worstFirst, type OverLimit } from './battery-limits.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import type { BatteryBranch } from '#core/network';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';

export const chargeLimit = defineRule({
	meta: {
		id: 'charge-limit',
		title: 'A battery is charged with no more than its charge limit',
		severity: 'error',
		group: 'batteries',
		why: 'Too much charging current plates lithium, gasses lead-acid, or opens the battery’s electronics while a charger or alternator is pushing.',
		source: { default: 'the limit given for the battery' }
	},

	messages: {
		over: ({ batteries, name }: { batteries: string; name: string }) => ({
			message: `In “${name}” more is charged than the battery’s charge limit: ${batteries}.`,
			remedy: 'Set the chargers lower, use fewer at a time, or more batteries in parallel.'
		})
	},

	/** One report for each bank, about its worst case. */
	*check(study) {
		const cases = continuousCases(study);
		for (const bank of banksOf(study).banks) {
			const rated = batteriesOf(bank).flatMap((battery) => {
				const limitA = chargeLimitA(study, battery);
				return limitA === null ? [] : [{ battery, limitA }];
			});
			const worst = worstCase(cases, ({ point }) =>
				Math.max(0, ...rated.map(({ battery, limitA }) => -point.batteryA[battery.index]! / limitA))
			);
			if (!worst || !exceeds(worst.value, 1)) continue;
			const over = worstFirst(
				rated.flatMap(({ battery, limitA }): OverLimit[] => {
					const currentA = -worst.result.point.batteryA[battery.index]!;
					return exceeds(currentA, limitA) ? [{ battery, currentA, limitA }] : [];
				})
			);
			yield {
				message: 'over',
				data: { batteries: overText(study, over), name: caseName(worst.result) },
				at: subjects(over.map(({ battery }) => partSubject(battery.part))),
				caseId: worst.result.id
			};
		}
	}
});

/** What a battery may be charged with, amps; null where it is not given. */
export function chargeLimitA(study: Study, { part }: BatteryBranch): number | null {
	const { chargeA } = study.part(part).params;
	return typeof chargeA === 'number' ? chargeA : null;
}
