import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { conductorBelowMinimum } from '../../../src/core/rules/conductor-below-minimum.ts';

const run = (gauge: string, { draw = 2, lengthM = 1, sheathed = false, profile = 'us-small-craft' } = {}) =>
	circuit(
		{ b: ['battery'], l: ['load', { draw }] },
		[
			['b.pos', 'l.pos', { gauge, lengthM, sheathed }],
			['l.neg', 'b.neg']
		],
		{ profile }
	);
const at = ['conductor:W1'];

testRule(conductorBelowMinimum, {
	valid: {
		// 33 CFR 183.425(d), (e), (g).
		'16 AWG on its own': run('16'),
		'18 AWG in a sheath': run('18', { sheathed: true }),
		'an 18 AWG tail of 7 in': run('18', { lengthM: 0.1778 }),
		// ISO 10133:2012 7.7.
		'1 mm² on its own in a metric craft': run('1 mm²', { profile: 'metric-small-craft' }),
		'0.75 mm² in a sheath in a metric craft': run('0.75 mm²', { sheathed: true, profile: 'metric-small-craft' }),
		'0.75 mm² of 200 mm in a metric craft': run('0.75 mm²', { lengthM: 0.2, profile: 'metric-small-craft' })
	},
	invalid: {
		'18 AWG on its own': {
			diagram: run('18'),
			says: 'W1 (18 AWG) is thinner than the 1.31 mm² asked for of a conductor on its own.',
			at,
			severity: 'error',
			remedy: 'Use at least 16 AWG, or run it in a sheath with others.',
			source: '33 CFR 183.425(e), 16 AWG'
		},
		'a tail longer than 7 in': {
			diagram: run('18', { lengthM: 0.179 }),
			says: 'W1 (18 AWG) is thinner than the 1.31 mm² asked for of a conductor on its own.',
			at,
			severity: 'error'
		},
		'a circuit of less than 1 A, perhaps electronic': {
			diagram: run('18', { draw: 0.99 }),
			says: 'W1 (18 AWG) is thinner than the 1.31 mm² asked for of a conductor on its own.',
			at,
			severity: 'warning'
		},
		'a circuit of 1 A is not less than 1 A': {
			diagram: run('18', { draw: 1 }),
			says: 'W1 (18 AWG) is thinner than the 1.31 mm² asked for of a conductor on its own.',
			at,
			severity: 'error'
		},
		'0.5 mm² in a sheath': {
			diagram: run('0.5 mm²', { sheathed: true, profile: 'metric-small-craft' }),
			says: 'W1 (0.5 mm²) is thinner than the 0.75 mm² asked for in a sheath.',
			at,
			severity: 'error',
			remedy: 'Use at least 0.75 mm².',
			source: 'ISO 10133:2012 7.7 (now ISO 13297)'
		},
		'0.75 mm² on its own, longer than 200 mm': {
			diagram: run('0.75 mm²', { lengthM: 0.21, profile: 'metric-small-craft' }),
			says: 'W1 (0.75 mm²) is thinner than the 1 mm² asked for of a conductor on its own.',
			at,
			severity: 'error'
		}
	}
});
