import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { reversedBattery } from '../../../src/core/rules/reversed-battery.ts';

/** 12.0 V and 10 mΩ each, so that currents can be worked out by hand. */
const block = ['battery', { emfV: 12, resistanceMilliohm: 10 }] as const;

/** 1 m of 6 AWG (13.30 mm²) at 0.01787 Ω·mm²/m and two joints of 0.04 mΩ: 1.424 mΩ a lead. */
const lead = { gauge: '6', lengthM: 1 };

testRule(reversedBattery, {
	valid: {
		'two in parallel': circuit({ b1: block, b2: block }, [
			['b1.pos', 'b2.pos', lead],
			['b1.neg', 'b2.neg', lead]
		]),
		'two strings of two': circuit({ b1: block, b2: block, b3: block, b4: block }, [
			['b1.pos', 'b2.neg'],
			['b3.pos', 'b4.neg'],
			['b2.pos', 'b4.pos'],
			['b1.neg', 'b3.neg']
		]),
		'a string of two beside a single one, which no turning makes right': circuit({ b1: block, b2: block, b3: block }, [
			['b1.pos', 'b2.neg'],
			['b2.pos', 'b3.pos'],
			['b1.neg', 'b3.neg']
		])
	},
	invalid: {
		// 24 V around two batteries and two leads: 24 / 0.022847 = 1050 A.
		'one of two back to back: the one whose + is on the negative bus': {
			diagram: circuit({ b1: block, b2: block, n: ['negative-bus'] }, [
				['b1.pos', 'b2.neg', lead],
				['b1.neg', 'b2.pos', lead],
				['b1.neg', 'n.1', lead]
			]),
			says: 'B2 is reversed: 1.05 kA flows through it with everything switched off, driven by 24.0 V.',
			at: ['part:b2', 'part:b1'],
			severity: 'fatal',
			remedy: 'Exchange the conductors on the two posts of B2.'
		},
		// Four batteries and four leads: 24 / 0.045694 = 525 A.
		'one in a string': {
			diagram: circuit({ b1: block, b2: block, b3: block, b4: block }, [
				['b1.pos', 'b2.neg', lead],
				['b3.pos', 'b4.pos', lead],
				['b2.pos', 'b4.neg', lead],
				['b1.neg', 'b3.neg', lead]
			]),
			says: 'B4 is reversed: 525 A flows through it with everything switched off, driven by 24.0 V.',
			at: ['part:b4', 'part:b1', 'part:b2', 'part:b3'],
			severity: 'fatal'
		}
	}
});
