/**
 * Hand figures of the weather station: 52.8 V at rest, 20 mΩ in use, 54.4 V and 10 mΩ into a short for each block.
 * Common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { editConductors } from '#core/diagram';
import { changed, example, figures, near, nearFault } from '../../support/examples/figures.ts';

const after = example('skarv-fell-after');

describe('repaired, at peak', () => {
	const f = figures(after);

	test('47.5 A, 23.75 A a string, bus 52.21 V', () => {
		near(f.conductorA('peak', 'M1'), 47.5);
		near(f.batteryA('peak', 'B1'), 23.75);
		near(f.batteryA('peak', 'B2'), 23.75);
		near(f.volts('peak', 'D.3', 'NB.1'), 52.21);
	});
	test('heater 11.78 A: 1.20 V in copper, 1.26 V from the bus and back', () => {
		near(f.loadA('peak', 'HTR'), 11.78);
		near(f.copperV('peak', 'C3p', 'C3n'), 1.2);
		near(f.volts('peak', 'D.3', 'NB.1') - f.loadV('peak', 'HTR'), 1.26);
	});
	test('inverter 25.05 A, 0.15 V from the bus', () => {
		near(f.loadA('peak', 'INV'), 25.05);
		near(f.volts('peak', 'D.3', 'NB.1') - f.loadV('peak', 'INV'), 0.15, 10);
	});
	test('converters at full output: 5.0 and 3.75 A in', () => {
		near(f.conductorA('peak', 'C4p'), 5);
		near(f.conductorA('peak', 'C5p'), 3.75);
	});
	test('heat pad 1.9 A', () => near(f.loadA('peak', 'PAD'), 1.9));
	test('in the sun 46 A flow back to the bank', () => near(f.conductorA('charging', 'C2p'), 46));
});

describe('repaired, dead shorts', () => {
	const f = figures(after);
	test('bus 54.4 V ÷ 7.41 mΩ = 7.34 kA', () => nearFault(f.shortA('D.3', 'NB.1'), 7340));
	test('heater 477 A', () => nearFault(f.shortA('HTR.pos', 'HTR.neg'), 477));
	test('24 V converter 2.51 kA', () => nearFault(f.shortA('C24.in-pos', 'C24.in-neg'), 2510));
	test('inverter 4.12 kA', () => nearFault(f.shortA('INV.pos', 'INV.neg'), 4120));
	test('one block at its posts: 54.4 V ÷ 10 mΩ = 5.44 kA', () => {
		const alone = figures(changed(after)).study.network.batteries[0]!;
		near(alone.faultEmfV / alone.faultResistanceOhm, 5440);
	});
});

describe('each fault alone', () => {
	test('leads of 3.0 m 6 AWG on one battery: 43.1 to 56.9 %', () => {
		const f = figures(
			changed(after, editConductors({ conductors: ['W1p', 'W1n'], set: { gauge: { system: 'awg', size: '6' }, lengthM: 3 } }))
		);
		const [b1, b2] = [f.batteryA('peak', 'B1'), f.batteryA('peak', 'B2')];
		near(b1 / (b1 + b2), 0.431);
		near(b2 / (b1 + b2), 0.569);
	});
	test.each([
		['14', 1.24],
		['12', 0.065 * 12],
		['10', 0.041 * 12],
		['8', 0.026 * 12]
	] as const)('the radio link on %s AWG: %s V in copper', (size, hand) => {
		const f = figures(changed(after, editConductors({ conductors: ['P4p', 'P4n'], set: { gauge: { system: 'awg', size } } })));
		near(f.copperV('peak', 'P4p', 'P4n'), hand);
	});
	test('on 8 AWG the radio link passes in copper (2.6 %) but not with fuse, lugs and what it shares: so it is drawn on 6 AWG', () => {
		const drop = (size: '6' | '8') => {
			const f = figures(changed(after, editConductors({ conductors: ['P4p', 'P4n'], set: { gauge: { system: 'awg', size } } })));
			return (f.volts('peak', 'C12.out-pos', 'C12.out-neg') - f.loadV('peak', 'RL')) / 12;
		};
		expect(drop('8')).toBeGreaterThan(0.03);
		expect(drop('6')).toBeLessThan(0.03);
	});
});
