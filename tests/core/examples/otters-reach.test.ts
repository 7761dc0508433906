/**
 * Hand figures of the workboat: 12.6 V at rest; 5 mΩ for the start battery, 5.5 mΩ for each house battery; into a
 * short 3.2 mΩ and 3.75 mΩ at 12.9 V. Common practice, no source.
 */
import { describe, expect, test } from 'vitest';
import { editConductors, setParams, type Diagram } from '#core/diagram';
import { changed, example, figures, near, nearFault } from '../../support/examples/figures.ts';

const after = example('otters-reach-after');
const before = example('otters-reach-before');

const gauge = (diagram: Diagram, conductors: string[], size: '8' | '10' | '12' | '14' | '16') =>
	changed(diagram, editConductors({ conductors, set: { gauge: { system: 'awg', size } } }));

describe('repaired, capstan working', () => {
	const f = figures(after);

	test('118 A, 59 A a battery', () => {
		near(f.conductorA('capstan', 'M1'), 118);
		near(f.batteryA('capstan', 'H1'), 59);
		near(f.batteryA('capstan', 'H2'), 59);
	});
	test('bus 12.14 V, capstan 11.55 V: 0.527 V in copper, 0.589 V from the bus and back', () => {
		// By hand without the shunt and the conductor behind it (0.23 mΩ, 27 mV), which stays within 3 %.
		near(f.volts('capstan', 'D.L', 'NB.2'), 12.14);
		near(f.loadV('capstan', 'CAP'), 11.55);
		near(f.copperV('capstan', 'C1p', 'C1n'), 0.527);
		near(f.volts('capstan', 'D.L', 'NB.2') - f.loadV('capstan', 'CAP'), 0.589);
	});
	test('panel 11.94 V', () => near(f.volts('capstan', 'PAN.feed', 'PAN.neg'), 11.94));
});

describe('repaired, cranking', () => {
	test('400 A: 0.71 V in the cables, 2.0 V in the battery, 9.99 V at the motor', () => {
		const f = figures(after);
		near(f.loadV('cranking', 'STR'), 9.99);
		// By hand 1.78 mΩ, with four lugs and the switch. Drawn there are six lugs: 1.86 mΩ and 0.74 V.
		near(f.volts('cranking', 'SB.pos', 'SB.neg') - f.loadV('cranking', 'STR'), 0.74);
	});
});

describe('repaired, dead shorts', () => {
	/** By hand at 12.9 V, the lower end of the range taken for lead-acid; the program takes 13.2 V unless told. */
	const f = figures(changed(after, setParams({ parts: ['SB', 'H1', 'H2'], params: { faultEmfV: 12.9 } })));
	test('start battery 12.9 V ÷ 3.2 mΩ = 4.03 kA at its posts, 2.59 kA at the starter', () => {
		// The house bank would help through the relay, so the link is taken off at the start battery's fuse.
		const alone = figures(
			changed(
				after,
				setParams({ parts: ['SB', 'H1', 'H2'], params: { faultEmfV: 12.9 } }),
				setParams({ parts: ['FK'], params: { fuseBA: null } })
			)
		);
		nearFault(alone.shortA('SB.pos', 'SB.neg'), 4030);
		nearFault(alone.shortA('STR.pos', 'STR.neg'), 2590);
	});
	test('house bus 12.9 V ÷ 3.07 mΩ = 4.21 kA, the relay open', () => {
		const open = figures(
			changed(
				after,
				setParams({ parts: ['SB', 'H1', 'H2'], params: { faultEmfV: 12.9 } }),
				setParams({ parts: ['FK'], params: { fuseBA: null } })
			)
		);
		nearFault(open.shortA('D.L', 'NB.2'), 4210);
		nearFault(open.shortA('CAP.pos', 'CAP.neg'), 1340);
	});
	test('with the relay closed the start battery adds to it', () => {
		expect(f.shortA('D.L', 'NB.2')).toBeGreaterThan(5000);
	});
});

describe('the bilge pump', () => {
	test.each([
		['14', 1.02],
		['12', 0.054 * 12],
		['10', 0.034 * 12],
		['8', 0.021 * 12]
	] as const)('on %s AWG: %s V in copper', (size, hand) => {
		const f = figures(gauge(after, ['C6a', 'C6b', 'C6p', 'C6n'], size));
		near(f.copperV('pump', 'C6a', 'C6b', 'C6p', 'C6n'), hand);
	});
	test('stalled on 14 AWG it draws 26.3 A, less than its 30 A fuse: 34 A at 12 V as a resistance, and 14 m of wire', () => {
		const stalled = changed(before, setParams({ parts: ['BP'], params: { drawAs: 'resistance', draw: 12 / 34 } }));
		const f = figures(stalled);
		near(f.loadA('pump', 'BP'), 26.3);
		expect(f.loadA('pump', 'BP')).toBeLessThan(30);
	});
});

describe('the navigation lights', () => {
	test.each([
		['16', 0.546],
		['14', 0.029 * 12],
		['12', 0.018 * 12]
	] as const)('on %s AWG: %s V in copper', (size, hand) => {
		near(figures(gauge(after, ['P7p', 'P7n'], size)).copperV('pump', 'P7p', 'P7n'), hand);
	});
	test('the panel feeder loses 0.15 V before they begin', () => {
		near(figures(after).copperV('pump', 'C2p', 'C2n'), 0.15);
	});
});

describe('the alternator conductor and the charging link', () => {
	test('75 °C insulation in the engine space: 125 A × 0.75 = 93.8 A; 105 °C: 160 A × 0.85 = 136 A', () => {
		near(figures(before).study.conductor('K2p').ampacity.currentA, 93.8);
		near(figures(after).study.conductor('K2p').ampacity.currentA, 136);
	});
	test('fused at the start end only, the link is let through 300 A by the house bank', () => {
		expect(figures(before).letThroughA('K3b', 'to')).toBe(300);
		expect(figures(after).letThroughA('K3b', 'to')).toBe(100);
	});
	test('the horn off the starter stud has nothing before it', () => {
		expect(figures(before).letThroughA('K5p', 'from')).toBe(Infinity);
	});
});
