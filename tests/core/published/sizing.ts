/**
 * Printed examples of voltage drop and sizing.
 *
 * Of the aircraft handbook only what needs none of its own tables: the program has no derating for altitude or for
 * bundles by loading (its page 11-27, 47 A → 42.77 A → 26 A), and no conductor that runs at 200 °C (its Example 2).
 * Two of its figures are misprints and are checked as the arithmetic beside them gives: 3.60 V (3.555 V) and 0.366 V
 * (0.491 V).
 */
import { areaMm2, copperOhmPerM, thinnestGauge } from '#core/conductors';
import type { Gauge } from '#core/diagram';
import { copperOhmMm2PerM } from '#core/tables';
import { metresFromFeet, squareMmFromCircularMils } from '#core/units';
import { battery, load, wire } from '../../support/network.ts';
import type { PublishedTable } from '../../support/published.ts';
import { IDEAL_OHM, solve } from '../../support/solve.ts';

const thinnest: Gauge = { system: 'awg', size: '18' };
const number = (gauge: Gauge): number => (gauge.size.endsWith('/0') ? 1 - Number(gauge.size[0]) : Number(gauge.size));
const FAA = 'FAA AC 43.13-1B';

/** Volts lost on a run by the solver: a stiff supply, the run, a load of so many amps. */
const lostV = (ohmPerFt: number, feet: number, amps: number): number =>
	solve({
		batteries: [battery('B', '+', '0', { emfV: 28, resistanceOhm: IDEAL_OHM })],
		branches: [wire('W', '+', 'l', ohmPerFt * feet)],
		loads: [load('L', 'l', '0', { amps })]
	}).volts('+', 'l');

/** Feet at which a run loses so many volts: the solver's drop of one foot, scaled. */
const longestFt = (ohmPerFt: number, amps: number, allowedV: number): number => allowedV / lostV(ohmPerFt, 1, amps);

const twoWire16V = (ohmPerM: number): number =>
	solve({
		batteries: [battery('B', '+', '0', { emfV: 24, resistanceOhm: IDEAL_OHM })],
		branches: [wire('P', '+', 'l', ohmPerM * metresFromFeet(100)), wire('N', 'm', '0', ohmPerM * metresFromFeet(100))],
		loads: [load('L', 'l', 'm', { amps: 4 })]
	}).loadV[0]!;
const sixteen: Gauge = { system: 'awg', size: '16' };
/** 7 strands: their lay adds 2.2 % to a straight conductor (NFPA 70 Chapter 9 Table 8). */
const lost16V = 24 - twoWire16V(copperOhmPerM(sixteen, copperOhmMm2PerM(75)) * 1.0218);

/** The book's own resistivity. */
const BOOK_OHM_CMIL_PER_FT = 10.09;
const bookOhmMm2PerM = (BOOK_OHM_CMIL_PER_FT * squareMmFromCircularMils(1)) / metresFromFeet(1);
const book14Ohm = copperOhmPerM({ system: 'awg', size: '14' }, bookOhmMm2PerM) * metresFromFeet(2300);
/** Area at which 2,300 ft have 0.2 Ω. */
const bookAreaMm2 = (bookOhmMm2PerM * metresFromFeet(2300)) / 0.2;

export const SIZING: readonly PublishedTable[] = [
	{
		source: FAA,
		clause: 'Table 11-7, V lost: Ω/ft × ft × A',
		seen: 'two-sources',
		way: 'computed',
		values: [
			{ what: 'No. 6, 107 ft, 20 A', printed: 0.942, ours: lostV(0.00044, 107, 20), within: 0.0005 },
			{ what: 'No. 4, 90 ft, 20 A', printed: 0.504, ours: lostV(0.00028, 90, 20), within: 0.0005 },
			{ what: 'No. 12, 88 ft, 20 A (printed 3.60)', printed: 3.555, ours: lostV(0.00202, 88, 20), within: 0.0005 },
			{ what: 'No. 14, 100 ft, 20 A', printed: 6.12, ours: lostV(0.00306, 100, 20), within: 0.005 }
		]
	},
	{
		source: FAA,
		clause: 'Table 11-8, No. 10 at 20 A: V lost at the lengths printed',
		seen: 'two-sources',
		way: 'computed',
		values: [
			{ what: '39 ft', printed: 0.98, ours: lostV(0.00126, 39, 20), within: 0.005 },
			{ what: '19.5 ft (printed 0.366)', printed: 0.491, ours: lostV(0.00126, 19.5, 20), within: 0.0005 },
			{ what: '156 ft', printed: 3.93, ours: lostV(0.00126, 156, 20), within: 0.005 },
			{ what: '273 ft', printed: 6.88, ours: lostV(0.00126, 273, 20), within: 0.005 }
		]
	},
	{
		source: FAA,
		clause: 'Table 11-8, No. 10 at 20 A: greatest length, ft',
		seen: 'two-sources',
		way: 'computed',
		because: 'the lengths are read from a chart, 2 % below the arithmetic',
		values: [
			{ what: '1 V', printed: 39, ours: longestFt(0.00126, 20, 1), within: 0.8 },
			{ what: '0.5 V', printed: 19.5, ours: longestFt(0.00126, 20, 0.5), within: 0.4 },
			{ what: '4 V', printed: 156, ours: longestFt(0.00126, 20, 4), within: 3.2 },
			{ what: '7 V', printed: 273, ours: longestFt(0.00126, 20, 7), within: 5.6 }
		]
	},
	{
		source: FAA,
		clause: 'page 11-26, Example 1: 28 V, 50 ft with the ground wire, 20 A, 1 V allowed',
		seen: 'verified',
		way: 'computed',
		values: [
			{
				what: 'size to choose, AWG',
				printed: 8,
				ours: number(thinnestGauge(thinnest, (gauge) => copperOhmPerM(gauge) * metresFromFeet(50) * 20 <= 1)!),
				within: 0
			}
		]
	},
	{
		source: 'a training page on NFPA 70 Chapter 9 Table 8',
		clause: '100 ft of two-wire No. 16, 4 A, 24 V',
		seen: 'verified',
		way: 'computed',
		because: 'the page rounds to 4.0 V and takes the percentage of that',
		values: [
			{ what: 'lost, V', printed: 4.0, ours: lost16V, within: 0.05 },
			{ what: 'lost, % of 24 V', printed: 16.7, ours: (100 * lost16V) / 24, within: 0.1 }
		]
	},
	{
		source: 'Lessons In Electric Circuits, volume I',
		clause: 'specific resistance: 230 V, load at 220 V and 25 A, 2,300 ft each way, 10.09 Ω·cmil/ft',
		seen: 'verified',
		way: 'computed',
		values: [
			{ what: 'area needed, cmil', printed: 116_035, ours: bookAreaMm2 / squareMmFromCircularMils(1), within: 0.5 },
			{
				what: 'size to choose, AWG (2/0 is −1)',
				printed: -1,
				ours: number(thinnestGauge(thinnest, (gauge) => areaMm2(gauge) >= bookAreaMm2)!),
				within: 0
			},
			{ what: '14 AWG each way, Ω', printed: 5.651, ours: book14Ohm, within: 0.0006 },
			{ what: '14 AWG both ways, Ω', printed: 11.301, ours: 2 * book14Ohm, within: 0.001 },
			{ what: '14 AWG, into a short, A', printed: 20.352, ours: 230 / (2 * book14Ohm), within: 0.002 }
		]
	}
];
