import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { acSideNotChecked } from '../../../src/core/rules/ac-side-not-checked.ts';

testRule(acSideNotChecked, {
	valid: { 'a system without an AC side': circuit({ b: ['battery'], l: ['load'], s: ['solar-controller'] }) },
	invalid: {
		'an inverter and a mains charger, once': {
			diagram: circuit({ i: ['inverter'], c: ['mains-charger'] }, [], { profile: 'caravan' }),
			says: 'I and C have an AC side. The AC side, neutral-earth bond, residual-current protection and inlet are not checked.',
			at: ['part:i', 'part:c'],
			severity: 'note',
			source: 'IEC 60364-7-721'
		},
		'an inverter alone': {
			diagram: circuit({ i: ['inverter'] }),
			says: 'I has an AC side. The AC side, neutral-earth bond, residual-current protection and inlet are not checked.',
			at: ['part:i'],
			severity: 'note'
		}
	}
});
