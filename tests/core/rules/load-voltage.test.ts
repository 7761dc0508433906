import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { loadVoltage } from '../../../src/core/rules/load-voltage.ts';

// Battery 13.2 V behind 100 mΩ, without other resistances to speak of: 10 A leaves 12.2 V, less a few millivolts.
const load = (minV: number | null, cases?: Record<string, { loads?: number }>) =>
	circuit(
		{ b: ['battery', { emfV: 13.2, resistanceMilliohm: 100 }], l: ['load', { draw: 10, minV }] },
		[
			['b.pos', 'l.pos', { gauge: '4/0', lengthM: 0.01 }],
			['b.neg', 'l.neg', { gauge: '4/0', lengthM: 0.01 }]
		],
		cases ? { cases } : {}
	);

testRule(loadVoltage, {
	valid: {
		'a load of which nothing is known': load(null),
		'a little less than it has': load(12.19),
		'a load that is off in every case': load(12.5, { off: { loads: 0 } })
	},
	invalid: {
		'a little more than it has': {
			diagram: load(12.2),
			says: 'In “on” L has 12.2 V; it works down to 12.2 V.',
			at: ['part:l'],
			severity: 'warning',
			caseId: 'on'
		},
		'more than its supply has': {
			diagram: load(13.3),
			says: 'L works down to 13.3 V, more than the 13.2 V its supply has with nothing on.',
			at: ['part:l'],
			severity: 'warning'
		},
		'the worst of two cases': {
			diagram: load(12.5, { some: { loads: 0.8 }, all: {} }),
			says: 'In “all” L has 12.2 V; it works down to 12.5 V.',
			at: ['part:l'],
			severity: 'warning',
			caseId: 'all'
		},
		'the input of a converter': {
			diagram: circuit(
				{
					b: ['battery', { nominalV: 24, emfV: 24, resistanceMilliohm: 100 }],
					c: ['dcdc-converter', { setV: 12, minInputV: 23 }],
					l: ['load', { draw: 20 }]
				},
				[
					['b.pos', 'c.in-pos', { gauge: '4/0', lengthM: 0.01 }],
					['b.neg', 'c.in-neg', { gauge: '4/0', lengthM: 0.01 }],
					['c.out-pos', 'l.pos'],
					['c.out-neg', 'l.neg']
				],
				{ nominalV: 24 }
			),
			says: 'In “on” C has 22.83 V; it works down to 23 V.',
			at: ['part:c'],
			severity: 'warning'
		}
	}
});
