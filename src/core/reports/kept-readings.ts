/** Readings planned or taken on site, each beside the model's volts of its case. */
import { studKey, type TakenReading } from '#core/diagram';
import { islandsOf } from '#core/network';
import type { Study } from '#core/rules';
import type { ReportInput } from './input.ts';
import { handColumn, numberColumn, table, textColumn, type Table } from './table.ts';

/** @returns null where none was planned: the sheet has rows of its own to fill in */
export function keptReadings({ diagram, study }: ReportInput): Table | null {
	const kept = Object.values(diagram.readings).toSorted((a, b) => a.order - b.order);
	if (kept.length === 0) return null;
	const modelV = modelOf(study);
	return table({
		id: 'kept-readings',
		title: 'Readings kept with the drawing',
		lead: 'Red lead where it says at, black lead where it says against. Those not taken yet have a blank.',
		columns: [
			textColumn('at', 'At', 1.8),
			textColumn('against', 'Against', 1.8),
			numberColumn('model', 'Model', 'V', { decimals: 3, weight: 0.9 }),
			numberColumn('reading', 'Reading', 'V', { decimals: 3, weight: 0.9 }),
			numberColumn('difference', 'Difference', 'mV', { decimals: 0, weight: 0.9 }),
			textColumn('taken', 'Taken by, date', 1.6),
			handColumn('again', 'Read again', 1.1)
		],
		rows: kept.map((reading) => {
			const { at, to, volts, by, date } = reading;
			const model = modelV(reading);
			return {
				group: `In the case “${diagram.cases[reading.case]?.label.trim() || reading.case}”`,
				cells: {
					at: study.studName(studKey(at)),
					against: study.studName(studKey(to)),
					model,
					reading: volts,
					difference: model === null || volts === null ? null : (volts - model) * 1000,
					taken: [by.trim(), date ?? ''].filter((word) => word !== '').join(', '),
					again: null
				}
			};
		}),
		whenEmpty: '',
		notes: [
			'The model knows no state of charge: readings that all differ alike say that the batteries stand elsewhere, not that a joint is bad.'
		]
	});
}

/** Volts between the two leads in the reading's case; null without an operating point, or where nothing joins the two. */
function modelOf({ network, cases }: Study): (reading: TakenReading) => number | null {
	const islands = islandsOf(network);
	return ({ case: caseId, at, to }) => {
		const [red, black] = [network.nodeOf.get(studKey(at)), network.nodeOf.get(studKey(to))];
		const point = cases.find(({ id }) => id === caseId)?.point;
		if (red === undefined || black === undefined || point?.status !== 'solved' || !islands.same(red, black)) return null;
		return point.nodeV[red]! - point.nodeV[black]!;
	};
}
