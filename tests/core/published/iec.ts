/** IEC and ISO: conductors, short circuits, small craft, fuses. */
import { areaMm2, copperOhmPerM, gaugesOf, shortCircuitK, thinnestGauge } from '#core/conductors';
import type { Gauge } from '#core/diagram';
import { profile } from '#core/profiles';
import {
	ADIABATIC_K,
	adiabaticAreaMm2,
	adiabaticK,
	breakingCapacityA,
	CONDUCTIVITY_56_OHM_MM2_PER_M,
	copperOhmMm2PerM,
	fuseFamily,
	IACS_OHM_MM2_PER_M,
	IEC_60228,
	SUPPLEMENTARY_LATEST,
	timeAt,
	type FuseFamilyId,
	type IecSize
} from '#core/tables';
import { cells, type PublishedTable } from '../../support/published.ts';

const iec = (size: string): Gauge => ({ system: 'iec', size: size as IecSize });
const metric = profile('metric-small-craft');

/** Ω/km at 20 °C: mm², class 2 plain and coated, class 5 coated. Class 5 plain, which conductors are taken as, is below. */
const OTHER_CLASSES = `
	0.5 36.0 36.7 40.1
	0.75 24.5 24.8 26.7
	1 18.1 18.2 20.0
	1.5 12.1 12.2 13.7
	2.5 7.41 7.56 8.21
	4 4.61 4.7 5.09
	6 3.08 3.11 3.39
	10 1.83 1.84 1.95
	16 1.15 1.16 1.24
	25 0.727 0.734 0.795
	35 0.524 0.529 0.565
	50 0.387 0.391 0.393
	70 0.268 0.27 0.277
	95 0.193 0.195 0.21
	120 0.153 0.154 0.164`;
const COLUMNS = { 'class 2': 'class2', 'class 2 coated': 'class2Coated', 'class 5 coated': 'class5Coated' } as const;

const strip: readonly FuseFamilyId[] = ['strip-sf30', 'strip-sf51'];
const blade: readonly FuseFamilyId[] = ['blade-mini', 'blade-regular', 'blade-large'];
const name = (id: FuseFamilyId): string => fuseFamily(id).standard;
const openingS = (ratingA: number, multiple: number): number => timeAt(SUPPLEMENTARY_LATEST.value(ratingA), multiple);

export const IEC: readonly PublishedTable[] = [
	{
		source: 'IEC 60228',
		clause: 'Table A.3, class 5 plain, greatest resistance at 20 °C, Ω/km',
		seen: 'two-sources',
		way: 'computed',
		values: cells(
			`0.5 39.0
			0.75 26.0
			1 19.5
			1.5 13.3
			2.5 7.98
			4 4.95
			6 3.3
			10 1.91
			16 1.21
			25 0.78
			35 0.554
			50 0.386
			70 0.272
			95 0.206
			120 0.161`,
			['class 5'],
			(size) => 1000 * copperOhmPerM(iec(size), IACS_OHM_MM2_PER_M.value),
			{ what: (size) => `${size} mm²`, within: (printed) => printed * 1e-12 }
		)
	},
	{
		source: 'IEC 60228',
		clause: 'Tables A.2 and A.3, the other columns, Ω/km',
		seen: 'two-sources',
		way: 'looked up',
		values: cells(
			OTHER_CLASSES,
			Object.keys(COLUMNS),
			(size, column) => IEC_60228.value[size as IecSize][COLUMNS[column as keyof typeof COLUMNS]],
			{ what: (size, column) => `${size} mm², ${column}` }
		)
	},
	{
		source: 'IEC 60228',
		clause: 'annex, factor to 20 °C',
		seen: 'verified',
		way: 'computed',
		because: 'the annex rounds the same coefficient of copper to three digits',
		values: cells(
			`30 0.962
			50 0.893
			70 0.833
			75 0.820
			90 0.781`,
			['Kt'],
			(temperatureC) => copperOhmMm2PerM(20) / copperOhmMm2PerM(Number(temperatureC)),
			{ what: (temperatureC) => `${temperatureC} °C`, within: () => 0.004 }
		)
	},
	{
		source: 'DIN ISO 6722-3, one reprint',
		clause: 'vehicle cable, greatest resistance at 20 °C, mΩ/m',
		seen: 'verified',
		way: 'computed',
		because: 'ISO 6722 sets limits 3 to 6 % below class 5 of IEC 60228, which ours are; ours less 4.5 %',
		values: cells(
			`1 18.5
			1.5 12.7
			2.5 7.6
			4 4.71
			6 3.14
			10 1.82
			16 1.16
			25 0.743
			35 0.527
			50 0.368
			70 0.259
			95 0.196
			120 0.153`,
			['limit'],
			(size) => 955 * copperOhmPerM(iec(size), IACS_OHM_MM2_PER_M.value),
			{ what: (size) => `${size} mm²`, within: (printed) => printed * 0.011 }
		)
	},
	{
		source: 'International Annealed Copper Standard (NBS Handbook 100)',
		clause: 'resistivity at 20 °C',
		seen: 'two-sources',
		way: 'computed',
		values: [
			{ what: 'Ω·mm²/m', printed: 0.017241, ours: copperOhmMm2PerM(20), within: 0 },
			// 0.15328 Ω·g/m² over a density of 8.89 g/cm³.
			{ what: 'Ω·g/m² at 8.89 g/cm³', printed: 0.15328, ours: copperOhmMm2PerM(20) * 8.89, within: 0.00001 }
		]
	},
	{
		source: 'IEC 60364-5-54 Table 54.2, copper',
		clause: 'k of the adiabatic equation up to 300 mm², A·√s/mm²',
		seen: 'two-sources',
		way: 'computed',
		because: 'the constant of IEC 60949 between the two temperatures; the table rounds to whole numbers, silicone by half a unit',
		values: [
			['PVC 70 °C', 70, 160, 115],
			['PVC 90 °C', 90, 160, 100],
			['XLPE or EPR 90 °C', 90, 250, 143],
			['rubber 60 °C', 60, 200, 141],
			['rubber 85 °C', 85, 220, 134],
			['silicone 180 °C', 180, 350, 132]
		].map(([what, startC, endC, printed]) => ({
			what: String(what),
			printed: Number(printed),
			ours: adiabaticK(Number(startC), Number(endC)),
			within: 0.55
		}))
	},
	{
		source: 'IEC 60364-5-54 Table 54.2, copper',
		clause: 'temperatures of that table, °C, as kept',
		seen: 'verified',
		way: 'looked up',
		values: (
			[
				['PVC 70 °C', 70, 160],
				['PVC 90 °C', 90, 160],
				['XLPE or EPR 90 °C', 90, 250],
				['rubber 60 °C', 60, 200],
				['rubber 85 °C', 85, 220],
				['silicone 180 °C', 180, 350]
			] as const
		).flatMap(([insulation, startC, endC]) => {
			const row = ADIABATIC_K.value.find((other) => other.insulation === insulation)!;
			return [
				{ what: `${insulation}, in service`, printed: startC, ours: row.startC, within: 0 },
				{ what: `${insulation}, end of the short`, printed: endC, ours: row.endC, within: 0 }
			];
		})
	},
	{
		source: 'IEC 60364-5-54 Table 54.2, copper',
		clause: 'k of a conductor of 90 °C thermoplastic insulation',
		seen: 'verified',
		way: 'computed',
		because: 'IEC 60949 gives 99.9, printed as 100',
		values: [{ what: 'k as rules use it', printed: 100, ours: shortCircuitK(90).value, within: 0.5 }]
	},
	{
		source: 'a guide to IEC 60364, worked example',
		clause: '12 kA for 0.02 s, k 143',
		seen: 'verified',
		way: 'computed',
		values: [
			{ what: 'area needed, mm²', printed: 11.9, ours: adiabaticAreaMm2(12_000, 0.02, 143), within: 0.05 },
			{
				what: 'size to choose, mm²',
				printed: 16,
				ours: Number(thinnestGauge(iec('0.5'), (gauge) => areaMm2(gauge) >= adiabaticAreaMm2(12_000, 0.02, 143))!.size),
				within: 0
			}
		]
	},
	{
		source: 'a trade page on small craft, conductivity 56 m/(Ω·mm²)',
		clause: 'worked example: 2.1 A, 18 m of cable, 0.6 V allowed',
		seen: 'verified',
		way: 'computed',
		values: [
			{
				what: 'size to choose, mm²',
				printed: 2.5,
				ours: Number(gaugesOf('iec').find((gauge) => areaMm2(gauge) >= (2 * 18 * 2.1 * CONDUCTIVITY_56_OHM_MM2_PER_M.value) / 0.6)!.size),
				within: 0
			}
		]
	},
	{
		source: 'ISO 10133:2012 (now ISO 13297:2020)',
		clause: '7.6 and 7.7',
		seen: 'verified',
		way: 'looked up',
		values: [
			{ what: 'panel mains, navigation lights, bilge pumps, %', printed: 3, ours: metric.drop.criticalPercent.value, within: 0 },
			{ what: 'installed separately, mm²', printed: 1, ours: metric.smallestSeparateMm2.value, within: 0 },
			{ what: 'in a sheath, mm²', printed: 0.75, ours: metric.smallestSheathedMm2.value, within: 0 }
		]
	},
	{
		source: 'ISO 8820-5:2015',
		clause: 'scope: types SF 30 and SF 51',
		seen: 'verified',
		way: 'looked up',
		values: [
			...strip.map((id) => ({
				what: `${name(id)}, breaking capacity, A`,
				printed: 2000,
				ours: breakingCapacityA(id, 32).value,
				within: 0
			})),
			...strip.map((id) => ({ what: `${name(id)}, rated voltage, V`, printed: 32, ours: fuseFamily(id).maxSystemV.value, within: 0 })),
			{ what: 'least rating, A', printed: 30, ours: Math.min(...strip.flatMap((id) => fuseFamily(id).ratingsA.value)), within: 0 },
			{ what: 'greatest rating, A', printed: 500, ours: Math.max(...strip.flatMap((id) => fuseFamily(id).ratingsA.value)), within: 0 }
		]
	},
	{
		source: 'GB/T 31465.3-2015 (ISO 8820-3:2010)',
		clause: 'types C, E and F',
		seen: 'verified',
		way: 'looked up',
		values: [
			...blade.map((id) => ({
				what: `${name(id)}, breaking capacity, A`,
				printed: 1000,
				ours: breakingCapacityA(id, 32).value,
				within: 0
			})),
			...blade.map((id) => ({ what: `${name(id)}, rated voltage, V`, printed: 32, ours: fuseFamily(id).maxSystemV.value, within: 0 })),
			{ what: 'greatest rating, A', printed: 100, ours: Math.max(...blade.flatMap((id) => fuseFamily(id).ratingsA.value)), within: 0 }
		]
	},
	{
		source: 'UL 248-14',
		clause: 'supplementary fuses, latest opening, s',
		seen: 'verified',
		way: 'computed',
		values: [
			{ what: '30 A at 135 %', printed: 3600, ours: openingS(30, 1.35), within: 0 },
			{ what: '60 A at 135 %', printed: 3600, ours: openingS(60, 1.35), within: 0 },
			{ what: '30 A at 200 %', printed: 120, ours: openingS(30, 2), within: 0 },
			{ what: '35 A at 200 %', printed: 240, ours: openingS(35, 2), within: 0 },
			{ what: '60 A at 200 %', printed: 240, ours: openingS(60, 2), within: 0 }
		]
	},
	{
		source: 'NEETS (US Navy training series), quoted',
		clause: 'fuse for 10 A of normal current, A',
		seen: 'verified',
		way: 'computed',
		values: [
			{ what: 'overload protection', printed: 12.5, ours: 10 / profile('common-practice').fuseLoadShare.value, within: 0 },
			{ what: 'direct shorts only', printed: 15, ours: 10 * profile('us-small-craft').overcurrent.factor(12).value, within: 0 }
		]
	}
];
