/** NFPA 70 (National Electrical Code). */
import { areaMm2, awgDiameterMm, copperOhmPerM } from '#core/conductors';
import type { Conductor } from '#core/diagram';
import { profile } from '#core/profiles';
import { ambientFactor, copperOhmMm2PerM, NEC_552_BOND, NEC_CHAPTER_9_TABLE_8, nextStandardRatingA, type AwgSize } from '#core/tables';
import { metresFromFeet, metresFromInches, millimetresFromInches, squareMmFromCircularMils } from '#core/units';
import { cells, rows, type PublishedTable } from '../../support/published.ts';

const rv = profile('rv-nec-552');
const MILD = { outsideC: 30, engineSpaceC: 50 };
const awg = (size: string) => ({ system: 'awg' as const, size: size as AwgSize });
const amps = (size: string, insulationC: string, bundleCount: number, outsideC = 30): number =>
	rv.ampacity({ gauge: awg(size), insulationC: Number(insulationC) as Conductor['insulationC'], environment: 'outside', bundleCount }, 12, {
		...MILD,
		outsideC
	}).currentA;
const awgCell = { what: (size: string, column: string) => `${size} AWG, ${column}` };

/** AWG, strands, circular mils, overall diameter in, Ω/kft at 75 °C uncoated and coated. */
const TABLE_8 = rows(`
	18 1 1620 0.04 7.77 8.08
	18 7 1620 0.046 7.95 8.45
	16 1 2580 0.051 4.89 5.08
	16 7 2580 0.058 4.99 5.29
	14 1 4110 0.064 3.07 3.19
	14 7 4110 0.073 3.14 3.26
	12 1 6530 0.081 1.93 2.01
	12 7 6530 0.092 1.98 2.05
	10 1 10380 0.102 1.21 1.26
	10 7 10380 0.116 1.24 1.29
	8 1 16510 0.128 0.764 0.786
	8 7 16510 0.146 0.778 0.809
	6 7 26240 0.184 0.491 0.51
	4 7 41740 0.232 0.308 0.321
	3 7 52620 0.26 0.245 0.254
	2 7 66360 0.292 0.194 0.201
	1 19 83690 0.332 0.154 0.16
	1/0 19 105600 0.372 0.122 0.127
	2/0 19 133100 0.418 0.0967 0.101
	3/0 19 167800 0.47 0.0766 0.0797
	4/0 19 211600 0.528 0.0608 0.0626
`).map(([size, strands, circularMils, diameterIn, ohm, coatedOhm]) => ({
	size: size!,
	strands: Number(strands),
	circularMils: Number(circularMils),
	diameterIn: Number(diameterIn),
	ohmPerKft: Number(ohm),
	coatedOhmPerKft: Number(coatedOhm)
}));
const SOLID = TABLE_8.filter(({ strands }) => strands === 1);
const STRANDED = TABLE_8.filter(({ strands }) => strands > 1);
/** Ω/kft at 75 °C by resistivity over the area of ASTM B258. */
const ohmPerKftAt75 = (size: string): number => copperOhmPerM(awg(size), copperOhmMm2PerM(75)) * metresFromFeet(1000);
/** Strands lie in a spiral and are so much longer than the conductor; the middle of what the table shows. */
const LAY = 1.021;

const STANDARD =
	'10 15 20 25 30 35 40 45 50 60 70 80 90 100 110 125 150 175 200 225 250 300 350 400 450 500 600 700 800 1000 1200 1600 2000 2500 3000 4000 5000 6000'
		.split(' ')
		.map(Number);

const table8 = { source: 'NFPA 70:2023', seen: 'two-sources' } as const;

export const NEC: readonly PublishedTable[] = [
	{
		source: 'NFPA 70:2023',
		clause: 'Table 310.16, copper, A',
		seen: 'verified',
		way: 'looked up',
		values: cells(
			`
			18 – – 14
			16 – – 18
			14 15 20 25
			12 20 25 30
			10 30 35 40
			8 40 50 55
			6 55 65 75
			4 70 85 95
			3 85 100 115
			2 95 115 130
			1 110 130 145
			1/0 125 150 170
			2/0 145 175 195
			3/0 165 200 225
			4/0 195 230 260`,
			['60', '75', '90'],
			(size, c) => amps(size, c, 2),
			{ what: (size, c) => `${size} AWG, ${c} °C` }
		)
	},
	{
		source: 'NFPA 70:2023',
		clause: 'Table 310.17, copper, A',
		seen: 'two-sources',
		way: 'looked up',
		values: cells(
			`
			18 – – 18
			16 – – 24
			14 25 30 35
			12 30 35 40
			10 40 50 55
			8 60 70 80
			6 80 95 105
			4 105 125 140
			3 120 145 165
			2 140 170 190
			1 165 195 220
			1/0 195 230 260
			2/0 225 265 300
			3/0 260 310 350
			4/0 300 360 405`,
			['60', '75', '90'],
			(size, c) => amps(size, c, 1),
			{ what: (size, c) => `${size} AWG, ${c} °C` }
		)
	},
	{
		source: 'NFPA 70:2023',
		clause: 'Table 310.15(B)(1)(1), ambient factors from 30 °C',
		seen: 'two-sources',
		way: 'computed',
		because: 'the table rounds Equation 310.15(B)(1) at the upper end of each range to two digits, one of them up',
		values: cells(
			`
			10 1.29 1.2 1.15
			15 1.22 1.15 1.12
			20 1.15 1.11 1.08
			25 1.08 1.05 1.04
			30 1 1 1
			35 0.91 0.94 0.96
			40 0.82 0.88 0.91
			45 0.71 0.82 0.87
			50 0.58 0.75 0.82
			55 0.41 0.67 0.76
			60 – 0.58 0.71
			65 – 0.47 0.65
			70 – 0.33 0.58
			75 – – 0.5
			80 – – 0.41
			85 – – 0.29`,
			['60', '75', '90'],
			(ambientC, c) => ambientFactor(Number(c), Number(ambientC)),
			{ what: (ambientC, c) => `to ${ambientC} °C, ${c} °C insulation`, within: () => 0.0051 }
		)
	},
	{
		source: 'California Electrical Code 2022 (NEC 2020)',
		clause: 'Table 690.31(A)(a), ambient factors of hotter insulation',
		seen: 'verified',
		way: 'computed',
		because: 'the table rounds the same equation to two digits',
		values: cells(
			`
			30 1 1
			35 0.97 0.97
			40 0.93 0.95
			45 0.89 0.92
			50 0.86 0.89
			55 0.82 0.86
			60 0.77 0.83
			65 0.73 0.79
			70 0.68 0.76
			75 0.63 0.73
			80 0.58 0.69
			85 0.52 0.65
			90 0.45 0.61
			95 0.37 0.56
			100 0.26 0.51
			105 – 0.46
			110 – 0.4
			115 – 0.32
			120 – 0.23`,
			['105', '125'],
			(ambientC, c) => ambientFactor(Number(c), Number(ambientC)),
			{ what: (ambientC, c) => `to ${ambientC} °C, ${c} °C insulation`, within: () => 0.0051 }
		)
	},
	{
		source: 'NFPA 70:2023',
		clause: 'Table 310.15(C)(1), more than three conductors, %',
		seen: 'two-sources',
		way: 'looked up',
		values: [
			[4, 80],
			[6, 80],
			[7, 70],
			[9, 70],
			[10, 50],
			[20, 50],
			[21, 45],
			[30, 45],
			[31, 40],
			[40, 40],
			[41, 35]
		].map(([count, printed]) => ({
			what: `${count} conductors`,
			printed: printed!,
			ours: (100 * amps('4', '90', count!)) / amps('4', '90', 2),
			within: 1e-9
		}))
	},
	{
		source: 'NFPA 70:2023',
		clause: 'Table 240.6(A), standard ratings, A',
		seen: 'verified',
		way: 'computed',
		// The rating asked for is between the one before and the printed one: the program must climb to the latter.
		values: STANDARD.map((printed, i) => ({
			what: `${printed} A`,
			printed,
			ours: nextStandardRatingA(((STANDARD[i - 1] ?? 0) + printed) / 2) ?? NaN,
			within: 0
		}))
	},
	{
		...table8,
		clause: 'Chapter 9 Table 8, circular mils',
		way: 'computed',
		because: 'ASTM B258’s formula against areas printed to four digits: 0.26 % at 18 AWG, 0.11 % or less elsewhere',
		values: TABLE_8.filter(({ size }, i) => TABLE_8.findIndex((row) => row.size === size) === i).map(({ size, circularMils }) => ({
			what: `${size} AWG`,
			printed: circularMils,
			ours: areaMm2(awg(size)) / squareMmFromCircularMils(1),
			within: circularMils * 0.003
		}))
	},
	{
		...table8,
		clause: 'Chapter 9 Table 8, overall diameter of solid conductors, in',
		way: 'computed',
		because: 'printed to a thousandth of an inch, which at 18 AWG is 2.5 %',
		values: SOLID.map(({ size, diameterIn }) => ({
			what: `${size} AWG`,
			printed: diameterIn,
			ours: awgDiameterMm(size as AwgSize) / millimetresFromInches(1),
			// 8 AWG is 0.1285 in and printed as 0.128.
			within: 0.00051
		}))
	},
	{
		...table8,
		clause: 'Chapter 9 Table 8, Ω/kft at 75 °C, solid uncoated',
		way: 'computed',
		because: 'resistivity at 75 °C over the area of ASTM B258 against three printed digits: 0.4 % at most',
		values: SOLID.map(({ size, ohmPerKft }) => ({
			what: `${size} AWG`,
			printed: ohmPerKft,
			ours: ohmPerKftAt75(size),
			within: ohmPerKft * 0.0042
		}))
	},
	{
		...table8,
		clause: 'Chapter 9 Table 8, Ω/kft at 75 °C, stranded uncoated',
		way: 'computed',
		because: 'the lay of the strands adds 1.8 to 2.5 % to a straight conductor; ours with 2.1 % added',
		values: STRANDED.map(({ size, ohmPerKft }) => ({
			what: `${size} AWG`,
			printed: ohmPerKft,
			ours: ohmPerKftAt75(size) * LAY,
			within: ohmPerKft * 0.0045
		}))
	},
	{
		...table8,
		clause: 'Chapter 9 Table 8, coated copper and stranded diameters',
		way: 'looked up',
		values: TABLE_8.flatMap(({ size, strands, diameterIn, coatedOhmPerKft }) => {
			const row = NEC_CHAPTER_9_TABLE_8.value.find((other) => other.size === size && other.strands === strands)!;
			const what = (column: string) => `${awgCell.what(size, `${strands} strands`)}, ${column}`;
			return [
				...(strands > 1 ? [{ what: what('diameter, in'), printed: diameterIn, ours: row.overallDiameterIn, within: 0 }] : []),
				{ what: what('coated, Ω/kft'), printed: coatedOhmPerKft, ours: row.coatedOhmPerKft, within: 0 }
			];
		})
	},
	{
		source: 'NFPA 70:2020',
		clause: '552.10(E)(4) and 552.10(C)(4)',
		seen: 'verified',
		way: 'looked up',
		values: [
			{
				what: 'device from where the supply connects, in',
				printed: 18,
				ours: rv.overcurrent.unsheathedM.value / metresFromInches(1),
				within: 1e-12
			},
			{ what: 'bond of the battery to the chassis, AWG', printed: 8, ours: Number(NEC_552_BOND.value), within: 0 }
		]
	}
];
