import { energyBalance } from '#core/energy';
import { compactNumber } from '#core/units';
import { defineRule } from './define.ts';

/** Days the bank should last with its sources, so that one dull day does not end in the dark. Common practice, no source. */
const TARGET_DAYS = 2;

interface Data {
	readonly useAh: number;
	readonly bringAh: number;
	readonly usableAh: number;
	readonly days: number;
	readonly withoutDays: number;
	readonly shortAh: number;
	readonly unknown: number;
}

const days = (count: number): string => `${compactNumber(count, 2)} ${count < 0.95 ? 'of a day' : 'days'}`;
const ah = (amount: number): string => `${compactNumber(amount)} Ah`;
const rest = ({ unknown }: Data): string =>
	unknown === 0 ? '' : ` Not counted, for want of their hours: ${unknown} ${unknown === 1 ? 'load or source' : 'loads and sources'}.`;

export const energyShortfall = defineRule({
	meta: {
		id: 'energy-shortfall',
		title: 'The bank and its sources cover the days of use',
		severity: 'note',
		group: 'batteries',
		why: 'A bank that is used faster than it is charged ends the trip early, and one that is often run flat wears out in a season.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		withSources: (data: Data) => ({
			message: `The loads use ${ah(data.useAh)} a day and the sources bring ${ah(data.bringAh)}: the ${ah(data.usableAh)} that may be used last ${days(data.days)}, and ${days(data.withoutDays)} without sources.${rest(data)}`,
			remedy: `Bring ${ah(data.shortAh)} a day more, use less, or plan where to charge.`
		}),
		withoutSources: (data: Data) => ({
			message: `The loads use ${ah(data.useAh)} a day and no source is counted: the ${ah(data.usableAh)} that may be used last ${days(data.withoutDays)}.${rest(data)}`,
			remedy: `Add a source that brings ${ah(data.shortAh)} a day, use less, or plan where to charge.`
		})
	},

	*check({ diagram, form }) {
		if (form.batteries.length === 0) return;
		const { totals, usableAh, autonomyDays, autonomyWithSourcesDays, notGiven, sources } = energyBalance(diagram, form);
		if (autonomyDays === null || autonomyWithSourcesDays === null || autonomyWithSourcesDays >= TARGET_DAYS) return;
		yield {
			message: sources.length > 0 ? 'withSources' : 'withoutSources',
			data: {
				useAh: totals.useAh,
				bringAh: totals.bringAh,
				usableAh,
				days: autonomyWithSourcesDays,
				withoutDays: autonomyDays,
				shortAh: totals.netAh,
				unknown: notGiven.length
			},
			at: [{ kind: 'diagram', id: '' }] as const
		};
	}
});
