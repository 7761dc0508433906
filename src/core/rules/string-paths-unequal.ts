import { ampsText, percentText } from '#core/units';
import { banksOf, batteriesOf, caseName, stringA, stringAh, wholeCases, worstCase, type Bank, type BatteryString } from './banks.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import type { Severity } from './finding.ts';
import type { CaseResult, Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { listed, partName } from './words.ts';

/** Deviation from a string's fair share, percent: common practice, no source. */
const LEVELS: readonly { readonly abovePercent: number; readonly severity: Severity }[] = [
	{ abovePercent: 20, severity: 'error' },
	{ abovePercent: 10, severity: 'warning' },
	{ abovePercent: 5, severity: 'note' }
];

/** Below this the bank is at rest, and its small currents say nothing. */
const LEAST_A = 1;

export const stringPathsUnequal = defineRule({
	meta: {
		id: 'string-paths-unequal',
		title: 'Batteries in parallel share the current by their capacity',
		severity: 'note',
		group: 'batteries',
		why: 'The string with the shortest way works hardest, day after day: it ages first, and its fuse or its electronics open first.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		unequal: ({ shares, deviationPercent, most, name }: { shares: string; deviationPercent: number; most: string; name: string }) => ({
			message: `In “${name}” the strings share the current unequally: ${shares}. ${most} carries ${percentText(deviationPercent)} more than its share.`,
			remedy: 'Give every string the same length and size of conductor to common posts, positive and negative counted together.'
		})
	},

	/** One report for each bank, about the continuous case with the greatest current. */
	*check(study) {
		for (const bank of banksOf(study).banks) {
			if (bank.strings.length < 2) continue;
			const worst = worstCase(wholeCases(study, bank), (result) => Math.abs(bankA(bank, result)));
			if (!worst || !exceeds(worst.value, LEAST_A)) continue;
			const { result } = worst;
			const totalA = bankA(bank, result);
			const totalAh = bank.strings.reduce((sum, string) => sum + stringAh(string), 0);
			const above = (string: BatteryString) => 100 * (stringA(string, result) / totalA / (stringAh(string) / totalAh) - 1);
			const most = greatest(bank.strings, above)!;
			const level = LEVELS.find(({ abovePercent }) => exceeds(above(most), abovePercent));
			if (!level) continue;
			yield {
				message: 'unequal',
				severity: level.severity,
				data: {
					shares: listed(bank.strings.map((string) => `${stringName(study, string)} ${ampsText(stringA(string, result))}`)),
					deviationPercent: above(most),
					most: stringName(study, most),
					name: caseName(result)
				},
				at: subjects(
					[most, ...bank.strings.filter((string) => string !== most)].flatMap(({ batteries }) =>
						batteries.map(({ part }) => partSubject(part))
					)
				),
				caseId: result.id
			};
		}
	}
});

const bankA = ({ strings }: Bank, result: CaseResult): number => strings.reduce((sum, string) => sum + stringA(string, result), 0);

/** "B1", "B1 + B2" from the negative end upward. */
export const stringName = (study: Study, { batteries }: BatteryString): string =>
	batteries.map(({ part }) => partName(study.part(part))).join(' + ');

export const bankName = (study: Study, bank: Bank): string => listed(batteriesOf(bank).map(({ part }) => partName(study.part(part))));
