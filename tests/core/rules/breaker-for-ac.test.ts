import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { breakerForAc } from '../../../src/core/rules/breaker-for-ac.ts';

const breaker = (madeFor: string) => circuit({ q: ['circuit-breaker', { madeFor }] });

testRule(breakerForAc, {
	valid: {
		'a breaker of which nothing is said': breaker('not-known'),
		'one for direct current': breaker('dc'),
		'one for both': breaker('both')
	},
	invalid: {
		'one for alternating current only': {
			diagram: breaker('ac'),
			says: 'Q is made for alternating current only.',
			at: ['part:q'],
			severity: 'error'
		}
	}
});
