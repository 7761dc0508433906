/** Amperage by 33 CFR 183.425 Table 5, which both profiles start from. */
import { areaMm2, awgWithin, gaugeText } from '#core/conductors';
import type { Gauge, InsulationC } from '#core/diagram';
import { ENGINE_SPACE_FACTOR, ISO_ANNEX, isoAnnexA, TABLE_5, table5A } from '#core/tables';
import type { Ampacity } from './types.ts';

type TableFigure = Pick<Ampacity, 'tableA' | 'table' | 'unverified'>;
type Factor = Ampacity['factors'][number];

/**
 * Amps before any factor. Metric sizes take the thickest AWG with no more copper; sizes thinner than 18 AWG are
 * not in the table and fall back on the small-craft annex, which is from memory.
 */
export function tableFigure(gauge: Gauge, insulationC: InsulationC): TableFigure {
	const awg = awgWithin(gauge);
	const column = `${insulationC} °C column`;
	if (awg === null) {
		// The annex begins at 0.75 mm²; thinner copper is scaled down by area, which errs to the safe side.
		const tableA = isoAnnexA('0.75', insulationC) * Math.min(1, areaMm2(gauge) / 0.75);
		return { tableA, table: `${ISO_ANNEX.source} (thinner than the smallest size of ${TABLE_5.source})`, unverified: true };
	}
	const tableA = table5A(awg, insulationC);
	const table =
		gauge.system === 'awg'
			? `${TABLE_5.source}, ${column}`
			: `${TABLE_5.source}, ${column}, ${gaugeText(gauge)} taken as ${awg} AWG, the thickest size with no more copper`;
	return { tableA, table, unverified: false };
}

export const engineSpaceFactor = (insulationC: InsulationC): Factor => ({
	name: 'engine space',
	factor: ENGINE_SPACE_FACTOR.value[insulationC],
	source: ENGINE_SPACE_FACTOR.source
});

/** Table figure with factors applied; factors of 1 are left out. */
export function withFactors(figure: TableFigure, factors: readonly Factor[]): Ampacity {
	const applied = factors.filter(({ factor }) => factor !== 1);
	return { ...figure, factors: applied, currentA: applied.reduce((amps, { factor }) => amps * factor, figure.tableA) };
}
