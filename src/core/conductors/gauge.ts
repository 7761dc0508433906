import { AWG_SIZES, IEC_SIZES, type Gauge } from '#core/diagram';
import type { AwgSize } from '#core/tables';
import { compactNumber, marked, millimetresFromInches, reader, roundedText } from '#core/units';

/** Gauge number of ASTM B258: 1/0 is 0, 4/0 is −3. */
function gaugeNumber(size: AwgSize): number {
	const slash = size.indexOf('/');
	return slash < 0 ? Number(size) : 1 - Number(size.slice(0, slash));
}

/** Solid diameter of an AWG size, mm: ASTM B258, d = 0.005 in × 92^((36 − n)/39). */
export const awgDiameterMm = (size: AwgSize): number => millimetresFromInches(0.005 * 92 ** ((36 - gaugeNumber(size)) / 39));

/** Copper area, mm²: by ASTM B258 for AWG, nominal for IEC 60228 sizes. */
export const areaMm2 = (gauge: Gauge): number => (gauge.system === 'awg' ? AWG_MM2[gauge.size] : Number(gauge.size));

const AWG_MM2 = Object.fromEntries(AWG_SIZES.map((size) => [size, (Math.PI / 4) * awgDiameterMm(size) ** 2])) as Record<AwgSize, number>;

/** "4/0 AWG", "35 mm²". */
export const gaugeText = (gauge: Gauge): string => (gauge.system === 'awg' ? `${gauge.size} AWG` : `${marked(gauge.size)} mm²`);

/** The same, with the other system in brackets for a reader who thinks in it: "6 AWG (13.3 mm²)", "16 mm² (≥ 6 AWG)". */
export function gaugeForReader(gauge: Gauge): string {
	const own = gaugeText(gauge);
	if (reader().gauge === null || gauge.system === reader().gauge) return own;
	if (gauge.system === 'awg') return `${own} (${compactNumber(areaMm2(gauge))} mm²)`;
	const within = awgWithin(gauge);
	return within === null ? own : `${own} (≥ ${within} AWG)`;
}

/** A least copper area: "0.82 mm²", with the thinnest AWG size that has it for a reader who thinks in those: "0.82 mm² (18 AWG)". */
export function areaText(mm2: number): string {
	const metric = `${roundedText(mm2, 2)} mm²`;
	if (reader().gauge !== 'awg') return metric;
	const enough = AWG_SIZES.find((size) => areaMm2({ system: 'awg', size }) >= mm2 * (1 - 1e-6));
	return enough === undefined ? metric : `${metric} (${enough} AWG)`;
}

/** All sizes of a system, thinnest first. */
export const gaugesOf = (system: Gauge['system']): readonly Gauge[] =>
	system === 'awg' ? AWG_SIZES.map((size) => ({ system: 'awg', size })) : IEC_SIZES.map((size) => ({ system: 'iec', size }));

/** Negative when `a` has less copper than `b`; compares across systems. */
export const compareGauges = (a: Gauge, b: Gauge): number => areaMm2(a) - areaMm2(b);

/** The next thicker size of the same system; null for the thickest. */
export const nextGaugeUp = (gauge: Gauge): Gauge | null => gaugesOf(gauge.system).find((other) => compareGauges(other, gauge) > 0) ?? null;

/** The thinnest size of a system, `from` or thicker, that satisfies the test; null when none does. */
export const thinnestGauge = (from: Gauge, satisfies: (gauge: Gauge) => boolean): Gauge | null =>
	gaugesOf(from.system).find((gauge) => compareGauges(gauge, from) >= 0 && satisfies(gauge)) ?? null;

/** The thickest AWG size with no more copper than `gauge`; null below 18 AWG. */
export function awgWithin(gauge: Gauge): AwgSize | null {
	if (gauge.system === 'awg') return gauge.size;
	return AWG_SIZES.findLast((size) => areaMm2({ system: 'awg', size }) <= areaMm2(gauge)) ?? null;
}
