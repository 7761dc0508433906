/** Lugs by gauge and hole, to take to the counter. */
import { areaMm2, gaugeText } from '#core/conductors';
import { threadText } from '#core/studs';
import { THREADS, type ThreadId } from '#core/tables';
import { conductorIds } from './conductors.ts';
import { endOf, type Fitting } from './ends.ts';
import type { ReportInput } from './input.ts';
import { numberColumn, table, textColumn } from './table.ts';

export function lugMatrix(input: ReportInput) {
	const fittings = conductorIds(input).flatMap((id) =>
		(['from', 'to'] as const).flatMap((end) => endOf(input.study, id, end).fitting ?? [])
	);
	const holes: (ThreadId | null)[] = [...THREADS.filter((id) => fittings.some(({ hole }) => hole === id)), null];
	const sizes = [...new Map(fittings.map((fitting) => [gaugeText(fitting.gauge), fitting.gauge])).values()].sort(
		(a, b) => areaMm2(b) - areaMm2(a)
	);
	const count = (test: (fitting: Fitting) => boolean): number | null => fittings.filter(test).length || null;
	return table<string>({
		id: 'lug-matrix',
		title: 'Lugs and rings by size and hole',
		columns: [
			textColumn('gauge', 'Conductor', 1.2),
			...holes.map((hole) => numberColumn(hole ?? 'clamp', hole === null ? 'Ferrules' : `Hole ${threadText(hole)}`, '', { decimals: 0 }))
		],
		rows: sizes.map((gauge) => ({
			cells: {
				gauge: gaugeText(gauge),
				...Object.fromEntries(
					holes.map((hole) => [hole ?? 'clamp', count((fitting) => gaugeText(fitting.gauge) === gaugeText(gauge) && fitting.hole === hole)])
				)
			}
		})),
		whenEmpty: 'The diagram has no conductors.',
		notes: ['Straight lugs are counted; take angled ones where the way out asks for it.']
	});
}
