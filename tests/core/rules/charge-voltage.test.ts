import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { chargeVoltage } from '../../../src/core/rules/charge-voltage.ts';

const charger = (setV: number, battery: Record<string, string | number> = {}, nominalV: 12 | 24 | 48 = 12) =>
	circuit(
		{ b: ['battery', { nominalV, ...battery }], c: ['mains-charger', { setV }] },
		[
			['c.pos', 'b.pos'],
			['c.neg', 'b.neg']
		],
		{ nominalV }
	);
const lead = { chemistry: 'lead-acid' };
const at = ['part:c', 'part:b'];

// 14.2 to 14.6 V for lithium iron phosphate, 14.1 to 14.8 V for lead-acid of 12 V: common practice, no source.
testRule(chargeVoltage, {
	valid: {
		'14.2 V on lithium': charger(14.2),
		'14.6 V on lithium': charger(14.6),
		'14.8 V on lead-acid': charger(14.8, lead),
		'57.6 V on 48 V lithium': charger(57.6, {}, 48),
		'28.4 V on two of 12 V lead-acid': circuit(
			{ b1: ['battery', lead], b2: ['battery', lead], c: ['mains-charger', { setV: 28.4 }] },
			[
				['b1.pos', 'b2.neg'],
				['c.pos', 'b2.pos'],
				['c.neg', 'b1.neg']
			],
			{ nominalV: 24 }
		),
		'a converter for a rail without a battery': circuit({ b: ['battery', { nominalV: 24 }], c: ['dcdc-converter', { setV: 12 }] }, [
			['b.pos', 'c.in-pos'],
			['b.neg', 'c.in-neg']
		])
	},
	invalid: {
		'14.7 V on lithium': {
			diagram: charger(14.7),
			says: 'C charges to 14.7 V; B should be charged to 14.2 V to 14.6 V.',
			at,
			severity: 'warning'
		},
		'14.1 V on lithium': {
			diagram: charger(14.1),
			says: 'C charges to 14.1 V; B should be charged to 14.2 V to 14.6 V.',
			at,
			severity: 'warning'
		},
		'14 V on lead-acid': {
			diagram: charger(14, lead),
			says: 'C charges to 14 V; B should be charged to 14.1 V to 14.8 V.',
			at,
			severity: 'warning'
		},
		'a quarter too much is still this system': {
			diagram: charger(18.25),
			says: 'C charges to 18.25 V; B should be charged to 14.2 V to 14.6 V.',
			at,
			severity: 'warning'
		},
		'more than a quarter too much is another': {
			diagram: charger(18.3),
			says: 'C charges to 18.3 V, but B need 14.2 V to 14.6 V: it is made for another system voltage.',
			remedy: 'Use a charger for this system voltage.',
			at,
			severity: 'error'
		},
		'a quarter too little is still this system': {
			diagram: charger(10.65),
			says: 'C charges to 10.65 V; B should be charged to 14.2 V to 14.6 V.',
			at,
			severity: 'warning'
		},
		'more than a quarter too little is another': {
			diagram: charger(10.6),
			says: 'C charges to 10.6 V, but B need 14.2 V to 14.6 V: it is made for another system voltage.',
			at,
			severity: 'error'
		},
		'a 24 V charger on 12 V': {
			diagram: charger(28.8),
			says: 'C charges to 28.8 V, but B need 14.2 V to 14.6 V: it is made for another system voltage.',
			at,
			severity: 'error'
		},
		'a 12 V charger on 24 V': {
			diagram: charger(14.4, {}, 24),
			says: 'C charges to 14.4 V, but B need 28.4 V to 29.2 V: it is made for another system voltage.',
			at,
			severity: 'error'
		}
	}
});
