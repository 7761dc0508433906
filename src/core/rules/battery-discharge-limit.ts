import { banksOf, batteriesOf, caseName, continuousCases, worstCase } from './banks.ts';
import { overText, worstFirst, type OverLimit } from './battery-limits.ts';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';

/** Share of the limit from which it is close: common practice, no source. */
const CLOSE = 0.8;

export const batteryDischargeLimit = defineRule({
	meta: {
		id: 'battery-discharge-limit',
		title: 'A battery delivers no more than its continuous limit',
		severity: 'error',
		group: 'batteries',
		why: 'Above its limit a lithium battery’s electronics open and everything goes dark at once; a lead-acid battery overheats and ages.',
		source: { default: 'the limit given for the battery' }
	},

	messages: {
		over: ({ batteries, name }: { batteries: string; name: string }) => ({
			message: `More is drawn in “${name}” than the continuous limit allows: ${batteries}.`,
			remedy: 'Use more or larger batteries, or less load at a time.'
		}),
		close: ({ batteries, name }: { batteries: string; name: string }) => ({
			message: `More than 80 % of the continuous limit is drawn in “${name}”: ${batteries}.`,
			remedy: 'Leave more room: larger batteries, or less load at a time.'
		})
	},

	/** One report for each bank, about its worst case. */
	*check(study) {
		const cases = continuousCases(study);
		for (const bank of banksOf(study).banks) {
			const rated = batteriesOf(bank).filter(({ continuousA }) => continuousA !== null);
			const worst = worstCase(cases, ({ point }) =>
				Math.max(0, ...rated.map(({ index, continuousA }) => point.batteryA[index]! / continuousA!))
			);
			if (!worst || !exceeds(worst.value, CLOSE)) continue;
			const isOver = exceeds(worst.value, 1);
			const over = worstFirst(
				rated.flatMap((battery): OverLimit[] => {
					const [currentA, limitA] = [worst.result.point.batteryA[battery.index]!, battery.continuousA!];
					return exceeds(currentA, (isOver ? 1 : CLOSE) * limitA) ? [{ battery, currentA, limitA }] : [];
				})
			);
			yield {
				message: isOver ? 'over' : 'close',
				severity: isOver ? 'error' : 'warning',
				data: { batteries: overText(study, over), name: caseName(worst.result) },
				at: subjects(over.map(({ battery }) => partSubject(battery.part))),
				caseId: worst.result.id,
				...(isOver ? {} : { source: 'common practice, no source' })
			};
		}
	}
});
