import { AWG_SIZES, type Gauge } from '#core/diagram';
import { LUGS, type LugRow } from '#core/tables';
import { areaMm2 } from './gauge.ts';

/** Lug or ring at a conductor's end, millimetres. Common practice; makers differ. */
export interface Lug {
	readonly padWidthMm: number;
	readonly thicknessMm: number;
	/** From the hole's centre to the end of the barrel. */
	readonly lengthMm: number;
	/** Outside of the barrel. */
	readonly barrelMm: number;
}

/** Barrel by cable diameter, both outside: common practice, no source. */
const BARREL_SHARE = 0.9;

/** A column of the lug table at a copper area: exact for AWG, between neighbours (by √area) for metric sizes. */
function column(name: keyof LugRow, gauge: Gauge): number {
	if (gauge.system === 'awg') return LUGS.value[gauge.size][name];
	const width = Math.sqrt(areaMm2(gauge));
	const widths = AWG_SIZES.map((size) => Math.sqrt(areaMm2({ system: 'awg', size })));
	if (width <= widths[0]!) return LUGS.value[AWG_SIZES[0]][name];
	// 120 mm² is beyond 4/0: the last step is carried on.
	const above = widths.findIndex((w) => w >= width);
	const i = above < 0 ? widths.length - 1 : above;
	const [w0, w1] = [widths[i - 1]!, widths[i]!];
	const [v0, v1] = [LUGS.value[AWG_SIZES[i - 1]!][name], LUGS.value[AWG_SIZES[i]!][name]];
	return v0 + ((width - w0) / (w1 - w0)) * (v1 - v0);
}

export const lugOf = (gauge: Gauge): Lug => ({
	padWidthMm: column('padWidthMm', gauge),
	thicknessMm: column('padThicknessMm', gauge),
	lengthMm: column('lengthMm', gauge),
	barrelMm: BARREL_SHARE * column('cableDiameterMm', gauge)
});

/** Outside diameter of the insulated cable, mm. Common practice; makers differ. */
export const cableDiameterMm = (gauge: Gauge): number => column('cableDiameterMm', gauge);
