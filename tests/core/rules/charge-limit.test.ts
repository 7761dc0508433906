import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { chargeLimit } from '../../../src/core/rules/charge-limit.ts';

const charging = (maxA: number, chargeA: number | null, draw = 0, setV = 14.6) =>
	circuit(
		{ b: ['battery', { chargeA }], c: ['mains-charger', { maxA, setV }], l: ['load', { draw: Math.max(draw, 0.001) }] },
		[
			['c.pos', 'b.pos', { gauge: '4/0' }],
			['c.neg', 'b.neg', { gauge: '4/0' }],
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		],
		{ cases: { day: { label: 'By day', sources: 1, loads: draw > 0 ? 1 : 0 } } }
	);

testRule(chargeLimit, {
	valid: {
		'as much as the limit': charging(50, 50),
		'no limit known': charging(200, null),
		'more, of which a load takes the rest': charging(60, 50, 11),
		// (13.4 − 13.2) V over 5 mΩ and two conductors of 0.25 mΩ: 36 A.
		'a larger charger whose voltage allows no more': charging(200, 50, 0, 13.4)
	},
	invalid: {
		'one of two in parallel, the other far from its limit': {
			diagram: circuit(
				{ a: ['battery', { chargeA: 500 }], b: ['battery', { chargeA: 20 }], c: ['mains-charger', { maxA: 60 }] },
				[
					['c.pos', 'a.pos', { gauge: '4/0' }],
					['c.neg', 'a.neg', { gauge: '4/0' }],
					['c.pos', 'b.pos', { gauge: '4/0' }],
					['c.neg', 'b.neg', { gauge: '4/0' }]
				],
				{ cases: { day: { label: 'By day', sources: 1 } } }
			),
			says: 'In “By day” more is charged than the battery’s charge limit: B 30 A of 20 A.',
			at: ['part:b'],
			severity: 'error'
		},
		'a little more than the limit': {
			diagram: charging(50.5, 50),
			says: 'In “By day” more is charged than the battery’s charge limit: B 50.5 A of 50 A.',
			at: ['part:b'],
			severity: 'error',
			caseId: 'day'
		}
	}
});
