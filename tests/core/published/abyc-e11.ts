/** ABYC E-11 as far as reprints and quotations show it. */
import { areaMm2, copperOhmPerM, thinnestGauge } from '#core/conductors';
import type { Conductor, Gauge } from '#core/diagram';
import { profile } from '#core/profiles';
import { ABYC_K, circularMilsFor, TERMINALS_PER_STUD, type AwgSize } from '#core/tables';
import { metresFromFeet, squareMmFromCircularMils } from '#core/units';
import { cells, rows, type PublishedTable } from '../../support/published.ts';

const e11 = profile('abyc-e11');
const awg = (size: string): Gauge => ({ system: 'awg', size: size as AwgSize });
const amps = (size: string, environment: Conductor['environment']): number =>
	e11.ampacity({ gauge: awg(size), insulationC: 105, environment, bundleCount: 1 }, 12, { outsideC: 30, engineSpaceC: 50 }).currentA;

const AMPS = [5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100];

/**
 * The 3 % table at 12 V in one reprint: feet there and back, then gauges by current. Rows 25 and 30 ft are left out:
 * that reprint has them swapped.
 */
const THREE_PERCENT = rows(`
	10 18 14 12 12 10 10 8 8 6 6 6 4 4
	15 16 12 10 10 8 8 6 6 4 4 4 2 2
	20 14 10 10 8 6 6 6 4 4 2 2 2 2
	40 10 8 6 6 4 4 2 2 1 1/0 1/0 2/0 2/0
	50 10 6 6 4 4 2 2 1 1/0 2/0 2/0 4/0 4/0
	60 10 6 6 4 2 2 1 1/0 2/0 3/0 3/0 4/0 4/0
	70 8 6 4 2 2 1 1/0 2/0 3/0 3/0 4/0 4/0
	80 8 6 4 2 2 1 1/0 2/0 3/0 4/0 4/0
	100 8 4 2 2 1 1/0 2/0 3/0 4/0 4/0
`).flatMap(([feet, ...sizes]) => sizes.map((size, i) => ({ feet: Number(feet), amps: AMPS[i]!, size })));

/** Thinnest AWG by CM = K·I·L/E; the table has no 3 AWG. */
const sizeFor = (currentA: number, loopFt: number): Gauge => {
	const needed = squareMmFromCircularMils(circularMilsFor(currentA, loopFt, 0.36));
	return thinnestGauge(awg('18'), (gauge) => areaMm2(gauge) >= needed && gauge.size !== '3')!;
};
/** 18, 16 … 1, 0, −1, −2, −3, as ASTM B258 counts. */
const number = (size: string): number => (size.endsWith('/0') ? 1 - Number(size[0]) : Number(size));

/** Cells printed thicker than AWG areas need: the table was worked out with SAE areas, which are 5 to 12 % smaller. */
export const PRINTED_THICKER = THREE_PERCENT.filter(({ amps, feet, size }) => areaMm2(awg(size)) > areaMm2(sizeFor(amps, feet)));
/** 60 ft, 15 A: printed 6 AWG, 2.3 % less than the formula asks. */
export const PRINTED_THINNER = THREE_PERCENT.filter(({ amps, feet, size }) => areaMm2(awg(size)) < areaMm2(sizeFor(amps, feet)));

export const ABYC: readonly PublishedTable[] = [
	{
		source: 'ABYC E-11, 105 °C, three reprints',
		clause: 'outside engine spaces, A',
		seen: 'two-sources',
		way: 'looked up',
		values: cells(
			`18 20
			16 25
			14 35
			12 45
			10 60
			8 80
			6 120
			4 160
			3 180
			2 210
			1 245
			1/0 285
			2/0 330
			3/0 385
			4/0 445`,
			['outside'],
			(size) => amps(size, 'outside'),
			{ what: (size) => `${size} AWG` }
		)
	},
	{
		source: 'ABYC E-11, 105 °C, three reprints',
		clause: 'inside engine spaces, A',
		seen: 'two-sources',
		way: 'computed',
		because: 'the reprints round 0.85 times the other column to a tenth, halves either way',
		values: cells(
			`18 17.0
			16 21.2
			14 29.8
			12 38.2
			10 51.0
			8 68.0
			6 102.0
			4 136.0
			3 153.0
			2 178.5
			1 208.2
			1/0 242.2
			2/0 280.5
			3/0 327.2
			4/0 378.2`,
			['inside'],
			(size) => amps(size, 'engine-space'),
			{ what: (size) => `${size} AWG`, within: () => 0.0501 }
		)
	},
	{
		source: 'ABYC E-11, quoted text and reprints',
		clause: 'voltage drop, studs',
		seen: 'two-sources',
		way: 'looked up',
		values: [
			{
				what: 'panel mains, bilge blowers, electronics, navigation lights, %',
				printed: 3,
				ours: e11.drop.criticalPercent.value,
				within: 0
			},
			{ what: 'other lighting, %', printed: 10, ours: e11.drop.ordinaryPercent.value, within: 0 },
			{ what: 'K, Ω·cmil/ft', printed: 10.75, ours: ABYC_K.value, within: 0 },
			{
				what: 'K of the resistivity in service, Ω·cmil/ft',
				printed: 10.75,
				ours: (copperOhmPerM(awg('10'), e11.dropResistivity.value) * areaMm2(awg('10')) * metresFromFeet(1)) / squareMmFromCircularMils(1),
				within: 0.005
			},
			{ what: 'terminals on one stud', printed: 4, ours: TERMINALS_PER_STUD.value, within: 0 }
		]
	},
	{
		source: 'ABYC E-11, quotation of 11.14.1.2',
		clause: 'smallest sizes, cmil (NFPA 70 Chapter 9 Table 8)',
		seen: 'verified',
		way: 'computed',
		values: [
			{ what: '16 AWG', printed: 2580, ours: e11.smallestSeparateMm2.value / squareMmFromCircularMils(1), within: 8 },
			{ what: '18 AWG in a sheath', printed: 1620, ours: e11.smallestSheathedMm2.value / squareMmFromCircularMils(1), within: 5 }
		]
	},
	{
		source: 'ABYC E-11, a reprint’s worked example',
		clause: 'bilge pump, 10 A, 11 ft out and 10 ft back, 12 V, 3 %',
		seen: 'verified',
		way: 'computed',
		values: [
			{ what: 'copper needed, cmil', printed: 6271, ours: circularMilsFor(10, 11 + 10, 0.03 * 12), within: 0.5 },
			// The text says 12 AWG is right; the table, made with SAE areas, prints 10.
			{ what: 'size to choose, AWG', printed: 12, ours: number(sizeFor(10, 21).size), within: 0 }
		]
	},
	{
		source: 'ABYC E-11, a reprint of the 3 % table at 12 V',
		clause: 'gauge by length and current, cells that AWG areas give',
		seen: 'verified',
		way: 'computed',
		values: THREE_PERCENT.filter((cell) => !PRINTED_THICKER.includes(cell) && !PRINTED_THINNER.includes(cell)).map(
			({ feet, amps: currentA, size }) => ({
				what: `${feet} ft, ${currentA} A`,
				printed: number(size),
				ours: number(sizeFor(currentA, feet).size),
				within: 0
			})
		)
	}
];
