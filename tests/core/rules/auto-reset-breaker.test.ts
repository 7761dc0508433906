/** 33 CFR 183.455(a): a manually reset, trip-free breaker, or a fuse. */
import { autoResetBreaker } from '../../../src/core/rules/auto-reset-breaker.ts';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const breaker = (reset: 'manual' | 'automatic', options: CircuitOptions) =>
	circuit(
		{ b: ['battery'], q: ['circuit-breaker', { reset }], l: ['load'] },
		[
			['b.pos', 'q.in'],
			['q.out', 'l.pos'],
			['l.neg', 'b.neg']
		],
		options
	);

const finding = {
	says: 'Q closes again by itself after it has opened.',
	at: ['part:q'],
	severity: 'error',
	source: '33 CFR 183.455(a)'
} as const;

testRule(autoResetBreaker, {
	valid: {
		'reset by hand on a boat': breaker('manual', { craft: 'boat', profile: 'us-small-craft' }),
		'reset by itself on a vehicle': breaker('automatic', { craft: 'vehicle' })
	},
	invalid: {
		'reset by itself on a boat': { diagram: breaker('automatic', { craft: 'boat' }), ...finding },
		'reset by itself under the boat rules': { diagram: breaker('automatic', { craft: 'vehicle', profile: 'us-small-craft' }), ...finding }
	}
});
