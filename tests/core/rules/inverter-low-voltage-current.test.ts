import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { inverterLowVoltageCurrent } from '../../../src/core/rules/inverter-low-voltage-current.ts';

/** 900 W out at 90 % are 1000 W in: 76 A at 13.2 V, 90.9 A at 11 V, 100 A at 10 V. */
const inverter = (cutOffV: number | null, gauge: string, fuseA = 125, negative = '1/0') =>
	circuit(
		{ b: ['battery', { resistanceMilliohm: 1 }], f: ['inline-fuse', { fuseA }], i: ['inverter', { watts: 900, efficiency: 0.9, cutOffV }] },
		[
			['b.pos', 'f.in', { gauge: '1/0', lengthM: 0.1 }],
			['f.out', 'i.pos', { gauge, lengthM: 0.1 }],
			['i.neg', 'b.neg', { gauge: negative, lengthM: 0.1 }]
		]
	);

// 33 CFR 183.425 Table 5, 105 °C: 8 AWG 80 A, 6 AWG 120 A.
testRule(inverterLowVoltageCurrent, {
	valid: {
		'80 A at 12.5 V on 8 AWG': inverter(12.5, '8'),
		'100 A at 10 V on 6 AWG': inverter(10, '6'),
		'a fuse of just that current': inverter(10, '6', 100),
		// 76 A is more than 80 % of 90 A: the rule on fuses says so.
		'a fuse already close to its rating at full voltage': inverter(10, '6', 90),
		'an inverter connected to nothing': circuit({ i: ['inverter'] })
	},
	invalid: {
		'80.6 A at 12.4 V on 8 AWG': {
			diagram: inverter(12.4, '8'),
			says: 'I draws 1000 W: 80.6 A at 12.4 V, where it switches off. W2 (8 AWG, 80 A) carries less.',
			at: ['part:i', 'conductor:W2'],
			severity: 'error',
			remedy: 'Use at least 6 AWG (120 A).'
		},
		'a voltage that had to be assumed, and a thin negative': {
			diagram: inverter(null, '1/0', 125, '8'),
			says: 'I draws 1000 W: 90.9 A at 11 V, where it switches off. W3 (8 AWG, 80 A) carries less.',
			at: ['part:i', 'conductor:W3'],
			severity: 'error',
			assumptions: ['I taken to switch off below 11 V.']
		},
		'a fuse that opens before': {
			diagram: inverter(9.9, '6', 100),
			says: 'I draws 1000 W: 101 A at 9.9 V, where it switches off. F is 100 A and opens before that.',
			at: ['part:i', 'part:f'],
			severity: 'warning'
		}
	}
});
