/**
 * Hand figures of the mobile library: 12.6 V at rest, 4.5 mΩ in use and 3.0 mΩ and 13.2 V into a short for each
 * 12 V block; fuse, copper, lugs, switch and shunt as for the trailer. Common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { addConductor, addPart, editConductors, reconnectConductor, removeItems, setParams } from '#core/diagram';
import { changed, example, figures, near, nearFault } from '../../support/examples/figures.ts';

const after = example('pagemoor-after');
const before = example('pagemoor-before');

describe('repaired, at peak', () => {
	const f = figures(after);

	test('187.8 A, 93.9 A a string, bus 24.00 V', () => {
		near(f.conductorA('peak', 'M1'), 187.8);
		near(f.batteryA('peak', 'B1'), 93.9);
		near(f.batteryA('peak', 'B4'), 93.9);
		near(f.volts('peak', 'D.L', 'NB.1'), 24);
	});
	test('inverter 74.6 A, 0.18 V from the bus', () => {
		near(f.loadA('peak', 'INV'), 74.6);
		near(f.volts('peak', 'D.L', 'NB.1') - f.loadV('peak', 'INV'), 0.18, 10);
	});
	test('lift 23.42 V: 0.511 V in copper, 0.575 V from the bus and back', () => {
		near(f.loadV('peak', 'LIFT'), 23.42);
		near(f.copperV('peak', 'C2p', 'C2n'), 0.511);
		near(f.volts('peak', 'D.L', 'NB.1') - f.loadV('peak', 'LIFT'), 0.575);
	});
	test('lighting: 12 A × 18 m × 5.40 mΩ/m = 1.17 V, 1.22 V with fuse and lugs; on 10 AWG 0.73 V', () => {
		near(f.copperV('peak', 'C6p', 'C6n'), 1.17);
		near(f.volts('peak', 'D.L', 'NB.1') - f.loadV('peak', 'LTG'), 1.22);
		const thicker = changed(after, editConductors({ conductors: ['C6p', 'C6n'], set: { gauge: { system: 'awg', size: '10' } } }));
		near(figures(thicker).copperV('peak', 'C6p', 'C6n'), 0.73);
	});
	test('heater 0.39 V from the bus', () => near(f.volts('peak', 'D.L', 'NB.1') - f.loadV('peak', 'HTR'), 0.39));
});

describe('repaired, dead shorts', () => {
	const f = figures(after);
	test('bus 26.4 V ÷ 4.90 mΩ = 5.39 kA', () => nearFault(f.shortA('D.L', 'NB.1'), 5390));
	test('lift 2.19 kA', () => nearFault(f.shortA('LIFT.pos', 'LIFT.neg'), 2190));
	test('across one string, before its fuse: 26.4 V ÷ 6.16 mΩ = 4.28 kA', () => {
		nearFault(figures(changed(after, removeItems({ parts: ['B3', 'B4'] }))).shortA('B1.pos', 'B2.neg'), 4280);
	});
});

describe('each fault alone', () => {
	test('a 3 A radio across one block: 15.7 A through its partner, 18.7 A through it', () => {
		const tapped = changed(
			after,
			addPart({ id: 'COM', part: { kind: 'load', at: { x: 0, y: 0 }, params: { draw: 3 } } }),
			addConductor({ id: 'T1', conductor: { from: { part: 'B2', terminal: 'pos' }, to: { part: 'COM', terminal: 'pos' } } }),
			addConductor({ id: 'T2', conductor: { from: { part: 'COM', terminal: 'neg' }, to: { part: 'B2', terminal: 'neg' } } })
		);
		const f = figures(tapped);
		near(f.batteryA('day', 'B1'), 15.7);
		near(f.batteryA('day', 'B2'), 18.7);
	});
	test('one string hung on the other by 2 AWG jumpers: 99.6 and 88.8 A, and 188 A through one 150 A fuse', () => {
		const hung = changed(
			after,
			removeItems({ parts: ['FS2'], conductors: ['S2n'] }),
			addConductor({
				id: 'J1',
				conductor: {
					from: { part: 'B3', terminal: 'pos' },
					to: { part: 'B1', terminal: 'pos' },
					gauge: { system: 'awg', size: '2' },
					lengthM: 0.9
				}
			}),
			addConductor({
				id: 'J2',
				conductor: {
					from: { part: 'B4', terminal: 'neg' },
					to: { part: 'B2', terminal: 'neg' },
					gauge: { system: 'awg', size: '2' },
					lengthM: 0.9
				}
			})
		);
		const f = figures(hung);
		near(f.batteryA('peak', 'B1'), 99.6);
		near(f.batteryA('peak', 'B3'), 88.8);
		near(f.linkA('peak', 'FS1.fuse'), 188);
	});
	test('an 8 AWG bond of 0.5 m in the return of the lift: 0.12 V and 9.4 W', () => {
		const f = figures(before);
		const { branch } = f.study.conductor('G1');
		near(80 * branch.resistanceOhm, 0.12);
		near(80 ** 2 * branch.resistanceOhm, 9.4);
		near(f.conductorA('peak', 'G1'), 80);
		// By hand the whole loop was 9.85 mΩ and 0.79 V, 3 mΩ of it in the steel of the chassis; here the chassis has no
		// resistance, so the loop is 6.8 mΩ and 0.55 V.
		near(f.volts('peak', 'D.L', 'NB.1') - f.loadV('peak', 'LIFT'), 0.55);
	});
	test('the lamp tails of 18 AWG are let through 40 A', () => expect(figures(before).letThroughA('L1p', 'from')).toBe(40));
	test('one block the wrong way round: 1.23 kA round the strings with nothing on', () => {
		// The leads of B4 changed over: X2 on its negative, the string's negative lead on its positive.
		const reversed = changed(
			after,
			reconnectConductor({ conductor: 'X2', end: 'to', on: { part: 'B4', terminal: 'neg' } }),
			reconnectConductor({ conductor: 'S2n', end: 'from', on: { part: 'B4', terminal: 'pos' } })
		);
		const f = figures(reversed);
		near(Math.abs(f.study.atRest.batteryA[0]!), 1230);
	});
	test('a block of 4.5 mΩ is what 150 Ah is taken for when nothing is given', () => {
		const given = changed(after, setParams({ parts: ['B1', 'B2', 'B3', 'B4'], params: { resistanceMilliohm: 4.5 } }));
		near(figures(given).batteryA('peak', 'B1'), figures(after).batteryA('peak', 'B1'), 0.01);
	});
});
