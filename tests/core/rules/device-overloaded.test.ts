import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { deviceOverloaded } from '../../../src/core/rules/device-overloaded.ts';

const through = (draw: number, duration: 'continuous' | 'surge' = 'continuous') =>
	circuit(
		{ b: ['battery'], q: ['battery-disconnect', { ratedA: 200 }], s: ['shunt', { ratedA: 300 }], l: ['load', { draw }] },
		[
			['b.pos', 'q.in', { gauge: '4/0' }],
			['q.out', 'l.pos', { gauge: '4/0' }],
			['l.neg', 's.system', { gauge: '4/0' }],
			['s.battery', 'b.neg', { gauge: '4/0' }]
		],
		{ cases: { run: { duration } } }
	);

testRule(deviceOverloaded, {
	valid: {
		'a current at the rating of the switch and two thirds of the shunt’s': through(200),
		'a surge above them': through(320, 'surge')
	},
	invalid: {
		'a switch over its rating and a warm shunt': {
			diagram: through(240),
			finds: [
				{ says: 'Q is rated 200 A and its contact carries 240 A continuously.', at: ['part:q'], severity: 'error', caseId: 'run' },
				{
					says: 'S, a shunt rated 300 A, carries 240 A continuously, more than two thirds of its rating.',
					at: ['part:s'],
					severity: 'warning',
					source: 'common practice, no source'
				}
			]
		},
		'a shunt at its rating is warm, not over it': {
			diagram: through(300),
			finds: [
				{ says: 'Q is rated 200 A and its contact carries 300 A continuously.', at: ['part:q'], severity: 'error' },
				{
					says: 'S, a shunt rated 300 A, carries 300 A continuously, more than two thirds of its rating.',
					at: ['part:s'],
					severity: 'warning'
				}
			]
		},
		'both over their ratings': {
			diagram: through(310),
			finds: [
				{ says: 'Q is rated 200 A and its contact carries 310 A continuously.', at: ['part:q'], severity: 'error' },
				{ says: 'S is rated 300 A and its resistor carries 310 A continuously.', at: ['part:s'], severity: 'error' }
			]
		}
	}
});
