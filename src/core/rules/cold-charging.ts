import { banksOf, batteriesOf } from './banks.ts';
import { defineRule } from './define.ts';
import { choiceOf, numberOf } from './params.ts';
import type { PartView } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { listed, partName } from './words.ts';
import { celsiusText } from '#core/units';

/** Lithium iron phosphate is not charged below freezing: common practice, no source. */
const LEAST_C: Readonly<Record<string, number | undefined>> = { 'lithium-iron-phosphate': 0 };

export const coldCharging = defineRule({
	meta: {
		id: 'cold-charging',
		title: 'A battery is not charged colder than it may be',
		severity: 'warning',
		group: 'batteries',
		why: 'Charged below freezing, lithium plates out as metal: capacity is gone for good, and needles of it may short the cell.',
		source: { default: 'the temperature given for the battery; below 0 °C for lithium by common practice, no source' }
	},

	messages: {
		tooCold: ({ batteries, leastC, charger }: { batteries: string; leastC: number; charger: string }) => ({
			message: `It gets as cold as ${batteries}, below the ${celsiusText(leastC)} down to which charging is allowed; nothing is known that keeps ${charger} from charging then.`,
			remedy: 'Use batteries that stop charging in the cold or are heated first, or place them where it is warmer.'
		})
	},

	/** One report for each bank that a charger reaches and that gets too cold. */
	*check(study) {
		const { form, nets, part } = study;
		for (const bank of banksOf(study).banks) {
			const top = bank.strings[0]!.batteries.at(-1)!.positive;
			const charger = form.sources.find(({ positive }) => nets.of(positive) === nets.of(top));
			const cold = batteriesOf(bank).flatMap((battery) => coldOf(part(battery.part)) ?? []);
			if (!charger || cold.length === 0) continue;
			yield {
				message: 'tooCold',
				data: {
					batteries: listed(cold.map(({ view, coldestC }) => `${celsiusText(coldestC)} at ${partName(view)}`)),
					leastC: Math.max(...cold.map(({ leastC }) => leastC)),
					charger: partName(part(charger.part))
				},
				at: subjects([...cold.map(({ view }) => view.id), charger.part].map(partSubject))
			};
		}
	}
});

function coldOf(view: PartView): { view: PartView; coldestC: number; leastC: number } | null {
	const coldestC = numberOf(view, 'coldestC');
	const leastC = numberOf(view, 'minChargeC') ?? LEAST_C[choiceOf(view, 'chemistry')] ?? null;
	const isKept = ['stops', 'heated'].includes(choiceOf(view, 'coldCutOff'));
	if (coldestC === null || leastC === null || isKept || coldestC >= leastC) return null;
	return { view, coldestC, leastC };
}
