import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { noPrecharge } from '../../../src/core/rules/no-precharge.ts';

const inverter = (watts: number, nominalV: 12 | 24 | 48 = 12, params: Record<string, string> = {}, battery: Record<string, string> = {}) =>
	circuit(
		{ b: ['battery', { nominalV, ...battery }], i: ['inverter', { watts, ...params }] },
		[
			['b.pos', 'i.pos'],
			['b.neg', 'i.neg']
		],
		{ nominalV }
	);

// From 2 kW at 12 V and 1 kW at 24 V and 48 V: common practice, no source.
testRule(noPrecharge, {
	valid: {
		'1999 W at 12 V': inverter(1999),
		'999 W at 24 V': inverter(999, 24),
		'an inverter that charges them itself': inverter(3000, 12, { precharge: 'yes' }),
		'lead-acid': inverter(3000, 12, {}, { chemistry: 'lead-acid' })
	},
	invalid: {
		'2000 W at 12 V': {
			diagram: inverter(2000),
			says: 'I (2000 W) on lithium is switched on with nothing known that charges its capacitors first.',
			at: ['part:i'],
			severity: 'note'
		},
		'1000 W at 24 V': {
			diagram: inverter(1000, 24),
			says: 'I (1000 W) on lithium is switched on with nothing known that charges its capacitors first.',
			at: ['part:i'],
			severity: 'note'
		},
		'1000 W at 48 V, said to have none': {
			diagram: inverter(1000, 48, { precharge: 'no' }),
			says: 'I (1000 W) on lithium is switched on with nothing known that charges its capacitors first.',
			at: ['part:i'],
			severity: 'note'
		}
	}
});
