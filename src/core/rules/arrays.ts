/** Solar arrays, as the controllers they feed describe them. */
import { COLD_VOLTAGE_FACTOR, type Sourced } from '#core/tables';
import { numberOf } from './params.ts';
import type { PartView, Study } from './study.ts';

export interface SolarArray {
	readonly view: PartView;
	readonly inSeries: number;
	readonly inParallel: number;
	/** One module at 25 °C; null where not given. */
	readonly vocV: number | null;
	readonly vmpV: number | null;
	readonly iscA: number | null;
	/** Voltage lost for each degree, as a share of the open-circuit voltage; null where not given. */
	readonly lossPerC: number | null;
	readonly coldestC: number | null;
}

export const arraysOf = ({ parts }: Study): SolarArray[] =>
	parts.flatMap((view) =>
		numberOf(view, 'maxPvV') === null
			? []
			: [
					{
						view,
						inSeries: numberOf(view, 'inSeries') ?? 1,
						inParallel: numberOf(view, 'inParallel') ?? 1,
						vocV: numberOf(view, 'moduleVocV'),
						vmpV: numberOf(view, 'moduleVmpV'),
						iscA: numberOf(view, 'moduleIscA'),
						lossPerC: percentToShare(numberOf(view, 'vocPercentPerC')),
						coldestC: numberOf(view, 'coldestC')
					}
				]
	);

const percentToShare = (percent: number | null): number | null => (percent === null ? null : percent / 100);

/** Modules are measured at this temperature. */
const TEST_C = 25;

/** Open-circuit voltage of the array at its coldest; null where module or temperature is not given. */
export function coldVolts({ inSeries, vocV, lossPerC, coldestC }: SolarArray): Sourced<number> | null {
	if (vocV === null || coldestC === null) return null;
	if (lossPerC !== null) {
		const value = inSeries * vocV * (1 + lossPerC * Math.max(0, TEST_C - coldestC));
		return { value, source: 'the module’s temperature coefficient', confidence: 'given' };
	}
	const { value: steps, source, confidence } = COLD_VOLTAGE_FACTOR;
	// Colder than the table: its last step, carried on at its own slope of 0.4 % a degree.
	const last = steps.at(-1)!;
	const factor = steps.find(({ downToC }) => coldestC >= downToC)?.factor ?? last.factor + 0.004 * (last.downToC - coldestC);
	return { value: inSeries * vocV * factor, source, confidence };
}

/** "3 in series, 2 strings". */
export const arrayText = ({ inSeries, inParallel }: SolarArray): string =>
	`${inSeries} in series${inParallel === 1 ? '' : `, ${inParallel} strings`}`;
