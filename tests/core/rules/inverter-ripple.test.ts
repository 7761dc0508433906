import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { inverterRipple } from '../../../src/core/rules/inverter-ripple.ts';

const inverter = (lengthM: number, nominalV: 12 | 24 = 12) =>
	circuit(
		{ b: ['battery', { nominalV, emfV: nominalV, resistanceMilliohm: 0.1 }], i: ['inverter', { watts: nominalV * 90, efficiency: 0.9 }] },
		[
			['b.pos', 'i.pos', { gauge: '2/0', lengthM }],
			['i.neg', 'b.neg', { gauge: '2/0', lengthM }]
		],
		{ nominalV }
	);

// About 100 A through 2 × (0.265 mΩ/m × L + 0.08 mΩ); the ripple is twice what is lost: 0.5 V at 12 V, 1 V at 24 V.
testRule(inverterRipple, {
	valid: {
		'4.2 m of 2/0 at 12 V': inverter(4.2),
		'8.8 m of 2/0 at 24 V': inverter(8.8, 24),
		'so long a run that it is found too thin': inverter(7),
		'a load': circuit({ b: ['battery'], l: ['load', { draw: 100 }] }, [
			['b.pos', 'l.pos', { lengthM: 2 }],
			['l.neg', 'b.neg', { lengthM: 2 }]
		])
	},
	invalid: {
		'4.6 m of 2/0 at 12 V': {
			diagram: inverter(4.6),
			says: 'I draws 102 A in pulses in “on”, which makes about 0.53 V of ripple at its terminals; 0.5 V is the most.',
			at: ['part:i'],
			severity: 'warning'
		},
		'9.3 m of 2/0 at 24 V': {
			diagram: inverter(9.3, 24),
			says: 'I draws 102 A in pulses in “on”, which makes about 1.04 V of ripple at its terminals; 1 V is the most.',
			at: ['part:i'],
			severity: 'warning'
		}
	}
});
