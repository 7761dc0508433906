/** Load list and the balance of a day. */
import { describe } from '#core/parts';
import { partName } from '#core/rules';
import { compactNumber } from '#core/units';
import type { ReportInput } from './input.ts';
import { numberColumn, table, textColumn } from './table.ts';
import { naturally } from './words.ts';

export function loadList({ study, energy }: ReportInput) {
	const counted = new Map(energy.loads.map((row) => [row.part, row]));
	const rows = study.parts
		.flatMap((part) =>
			part.links.flatMap((link) => {
				if (link.kind !== 'load' || link.followsSource !== null) return [];
				const row = counted.get(part.id);
				return [
					{
						cells: {
							load: partName(part),
							what: part.definition ? part.name : '',
							ratings: part.summary,
							start: link.starting ? link.starting.times : null,
							startS: link.starting?.seconds ?? null,
							critical: link.critical ? 'yes' : 'no',
							watts: row?.watts ?? null,
							hours: row?.hours ?? (link.hoursPerDay === undefined ? 'seconds' : 'not given'),
							efficiency: row ? row.efficiency * 100 : null,
							wh: row?.wh ?? null,
							ah: row?.ah ?? null
						}
					}
				];
			})
		)
		.sort((a, b) => naturally(a.cells.load, b.cells.load));
	return table({
		id: 'load-list',
		title: 'Load list',
		columns: [
			textColumn('load', 'Load', 1.2),
			textColumn('what', 'What it is', 1.2),
			textColumn('ratings', 'Ratings', 1.6),
			numberColumn('start', 'At start', '× rated', { weight: 0.8 }),
			numberColumn('startS', 'Start lasts', 's', { weight: 0.8 }),
			textColumn('critical', 'Critical', 0.7),
			numberColumn('watts', 'Draw', 'W', { weight: 0.8 }),
			numberColumn('hours', 'A day', 'h', { weight: 0.8 }),
			numberColumn('efficiency', 'Converted at', '%', { decimals: 0, weight: 0.9 }),
			numberColumn('wh', 'From the bank', 'Wh/day', { decimals: 0, weight: 1 }),
			numberColumn('ah', 'From the bank', 'Ah/day', { decimals: 1, weight: 1 })
		],
		rows,
		whenEmpty: 'The diagram has no loads.',
		notes: energy.elsewhere.length > 0 ? [`Not fed by a battery that counts: ${energy.elsewhere.join(', ')}.`] : []
	});
}

export function sourceList({ energy, diagram }: ReportInput) {
	return table({
		id: 'source-list',
		title: 'What a day brings',
		columns: [
			textColumn('source', 'Source', 1.2),
			textColumn('what', 'What it is', 1.4),
			textColumn('how', 'Reckoned as', 2),
			numberColumn('wh', 'Brings', 'Wh/day', { decimals: 0 }),
			numberColumn('ah', 'Brings', 'Ah/day', { decimals: 1 })
		],
		rows: energy.sources.map(({ part, label, how, wh, ah }) => ({
			cells: { source: label, what: describe(diagram.parts[part]!).name, how, wh, ah }
		})),
		whenEmpty: 'No source has its hours or its array given, so nothing is counted.',
		notes: []
	});
}

export function energyTotals({ energy }: ReportInput) {
	const { totals, bankV, usableWh, usableAh, autonomyDays, autonomyWithSourcesDays, notGiven } = energy;
	const unused = notGiven.length > 0 ? 'no hours given' : 'nothing is used';
	const row = (what: string, wh: number, ah: number) => ({ cells: { what, wh, ah, days: null as number | string | null } });
	return table({
		id: 'energy-balance',
		title: 'Energy balance of a day',
		columns: [
			textColumn('what', '', 3),
			numberColumn('wh', 'Energy', 'Wh', { decimals: 0 }),
			numberColumn('ah', `At ${compactNumber(bankV)} V`, 'Ah', { decimals: 1 }),
			numberColumn('days', 'Lasts', 'days', { decimals: 2 })
		],
		rows: [
			row('Used', totals.useWh, totals.useAh),
			row('Brought by the sources', totals.bringWh, totals.bringAh),
			row('Used beyond what is brought', totals.netWh, totals.netAh),
			row('Usable share of the bank', usableWh, usableAh),
			{
				cells: {
					what: 'Bank alone, from full',
					wh: null,
					ah: null,
					days: autonomyDays ?? unused
				}
			},
			{
				cells: {
					what: 'Bank and sources, from full',
					wh: null,
					ah: null,
					days: autonomyWithSourcesDays ?? (totals.useWh > 0 ? 'as long as they bring it' : unused)
				}
			}
		],
		whenEmpty: '',
		notes:
			notGiven.length === 0
				? []
				: [`Not in the sums, because not given: ${notGiven.map(({ label, what }) => `${what} of ${label}`).join('; ')}.`]
	});
}
