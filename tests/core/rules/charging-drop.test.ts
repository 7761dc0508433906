import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { chargingDropRule } from '../../../src/core/rules/charging-drop.ts';

/** 20 A through conductors of 6 AWG, 1.3435 mΩ/m and 0.08 mΩ of lugs, there and back. */
const charging = (lengthM: number, nominalV: 12 | 24 = 12, sources = 1) =>
	circuit(
		{ b: ['battery', { nominalV }], c: ['mains-charger', { maxA: 20, setV: 1.2 * nominalV }] },
		[
			['c.pos', 'b.pos', { lengthM }],
			['c.neg', 'b.neg', { lengthM }]
		],
		{ nominalV, cases: { day: { sources } } }
	);

// 0.2 V at 20 A is 10 mΩ, 5 mΩ each way: (5 − 0.08)/1.3435 = 3.66 m. Common practice, no source.
testRule(chargingDropRule, {
	valid: {
		'less than 0.2 V': charging(3.65),
		'twice as much at 24 V': charging(7.3, 24),
		'a charger that is never on': charging(20, 12, 0),
		'a converter for a rail without a battery': circuit(
			{ b: ['battery', { nominalV: 24 }], c: ['dcdc-converter', { setV: 12 }], l: ['load', { draw: 15 }] },
			[
				['b.pos', 'c.in-pos'],
				['b.neg', 'c.in-neg'],
				['c.out-pos', 'l.pos', { lengthM: 9 }],
				['l.neg', 'c.out-neg', { lengthM: 9 }]
			]
		)
	},
	invalid: {
		'just more than 0.2 V': {
			diagram: charging(3.7),
			says: 'More than 0.2 V is lost between charger and battery, there and back, to the charger’s own current: C 0.2 V (1.7 %).',
			at: ['part:c'],
			severity: 'warning',
			caseId: 'day'
		},
		'in the case in which it loses most': {
			diagram: {
				...charging(5),
				cases: circuit({}, [], { cases: { dim: { sources: 0.8 }, day: { sources: 1 }, dusk: { sources: 0.9 } } }).cases
			},
			says: 'More than 0.2 V is lost between charger and battery, there and back, to the charger’s own current: C 0.27 V (2.3 %).',
			at: ['part:c'],
			severity: 'warning',
			caseId: 'day'
		},
		'two chargers, each by its own current, the worse first': {
			diagram: circuit(
				{ b: ['battery'], c: ['mains-charger', { maxA: 20 }], d: ['mains-charger', { maxA: 20 }] },
				[
					['c.pos', 'b.pos', { lengthM: 4 }],
					['c.neg', 'b.neg', { lengthM: 4 }],
					['d.pos', 'b.pos', { lengthM: 5 }],
					['d.neg', 'b.neg', { lengthM: 5 }]
				],
				{ cases: { day: { sources: 1 } } }
			),
			// 2·(5.374 + 0.08) and 2·(6.7175 + 0.08) mΩ at 20 A.
			says: 'More than 0.2 V is lost between charger and battery, there and back, to the charger’s own current: D 0.27 V (2.3 %) and C 0.22 V (1.8 %).',
			at: ['part:d', 'part:c'],
			severity: 'warning'
		}
	}
});
