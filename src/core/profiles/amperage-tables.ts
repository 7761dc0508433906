/** Published amperage tables in one shape, so that profiles can read, show and change any cell. */
import { areaMm2, awgWithin, gaugesOf, gaugeText } from '#core/conductors';
import { AWG_SIZES, type Gauge } from '#core/diagram';
import {
	ABYC_105,
	ISO_ANNEX,
	ISO_COLUMNS_C,
	isoAnnexA,
	NEC_310_16,
	NEC_310_17,
	TABLE_5,
	TABLE_5_COLUMNS_C,
	table5A,
	type IsoInsulationC,
	type NecAmpacity,
	type Sourced,
	type Table5InsulationC
} from '#core/tables';

export interface AmperageTable {
	/** In the keys of its cells: "cfr-5:4/0:105". */
	readonly id: string;
	/** As a reader would look it up, without the column. */
	readonly source: string;
	readonly system: Gauge['system'];
	readonly sizes: readonly string[];
	/** Insulation temperatures of the columns, ascending. */
	readonly columnsC: readonly number[];
	/** Amps at 30 °C; null where the table prints none. */
	cell(size: string, columnC: number): Sourced<number> | null;
}

/** Ambient temperature all of these are printed for. */
export const TABLE_AMBIENT_C = 30;

export const cellKey = ({ id }: AmperageTable, size: string, columnC: number): string => `${id}:${size}:${columnC}`;

/** The size a gauge is read under, the thickest with no more copper; null below the smallest. */
export function sizeIn({ system, sizes }: AmperageTable, gauge: Gauge): string | null {
	if (gauge.system === system) return sizes.includes(gauge.size) ? gauge.size : null;
	if (system === 'awg') return awgWithin(gauge);
	const within = gaugesOf('iec').filter((other) => sizes.includes(other.size) && areaMm2(other) <= areaMm2(gauge));
	return within.at(-1)?.size ?? null;
}

/** ", 35 mm² taken as 2 AWG, the thickest size with no more copper", or nothing where the size is in the table. */
export const readAs = ({ system }: AmperageTable, gauge: Gauge, size: string): string =>
	gauge.system === system
		? ''
		: `, ${gaugeText(gauge)} taken as ${system === 'awg' ? `${size} AWG` : `${size} mm²`}, the thickest size with no more copper`;

export const CFR_TABLE_5: AmperageTable = {
	id: 'cfr-5',
	source: TABLE_5.source,
	system: 'awg',
	sizes: AWG_SIZES,
	columnsC: TABLE_5_COLUMNS_C,
	cell: (size, columnC) => ({
		value: table5A(size as (typeof AWG_SIZES)[number], columnC as Table5InsulationC),
		source: TABLE_5.source,
		confidence: TABLE_5.confidence
	})
};

/** Only its 105 °C column was seen; the others are taken from the law's table, which E-11 is remembered to repeat. */
export const ABYC_TABLE: AmperageTable = {
	...CFR_TABLE_5,
	id: 'abyc-e11',
	source: 'ABYC E-11 (voluntary), amperage',
	cell(size, columnC) {
		if (columnC !== 105)
			return { ...CFR_TABLE_5.cell(size, columnC)!, source: `ABYC E-11, ${columnC} °C column, from memory`, confidence: 'memory' };
		const { value, ...rest } = ABYC_105;
		return { value: value[size as (typeof AWG_SIZES)[number]].outsideA, ...rest };
	}
};

const necTable = (id: string, { value, source, confidence }: typeof NEC_310_16): AmperageTable => ({
	id,
	source,
	system: 'awg',
	sizes: AWG_SIZES,
	columnsC: [60, 75, 90],
	cell(size, columnC) {
		const amps = value[size as (typeof AWG_SIZES)[number]][columnC as keyof NecAmpacity];
		return amps === null ? null : { value: amps, source, confidence };
	}
});

export const NEC_FREE_AIR = necTable('nec-310.17', NEC_310_17);
export const NEC_TOGETHER = necTable('nec-310.16', NEC_310_16);

export const ISO_TABLE: AmperageTable = {
	id: 'iso-13297',
	source: ISO_ANNEX.source,
	system: 'iec',
	sizes: gaugesOf('iec').flatMap(({ size }) => (size in ISO_ANNEX.value ? [size] : [])),
	columnsC: ISO_COLUMNS_C,
	cell: (size, columnC) => ({
		value: isoAnnexA(size as keyof typeof ISO_ANNEX.value, columnC as IsoInsulationC),
		source: ISO_ANNEX.source,
		confidence: ISO_ANNEX.confidence
	})
};
