import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { batteryDischargeLimit } from '../../../src/core/rules/battery-discharge-limit.ts';

const drawing = (draw: number, continuousA: number | null = 100, duration: 'continuous' | 'surge' = 'continuous') =>
	circuit(
		{ b: ['battery', { continuousA }], l: ['load', { draw }] },
		[
			['b.pos', 'l.pos', { gauge: '4/0' }],
			['l.neg', 'b.neg', { gauge: '4/0' }]
		],
		{ cases: { on: { label: 'All on', duration } } }
	);
const at = ['part:b'];

testRule(batteryDischargeLimit, {
	valid: {
		'80 % of the limit': drawing(80),
		'a battery without a limit': drawing(500, null),
		'a surge': drawing(150, 100, 'surge')
	},
	invalid: {
		'a little more than 80 %': {
			diagram: drawing(80.1),
			says: 'More than 80 % of the continuous limit is drawn in “All on”: B 80.1 A of 100 A.',
			at,
			severity: 'warning',
			source: 'common practice, no source'
		},
		'all of it': {
			diagram: drawing(100),
			says: 'More than 80 % of the continuous limit is drawn in “All on”: B 100 A of 100 A.',
			at,
			severity: 'warning'
		},
		'more than all': {
			diagram: drawing(101),
			says: 'More is drawn in “All on” than the continuous limit allows: B 101 A of 100 A.',
			at,
			severity: 'error',
			source: 'the limit given for the battery',
			caseId: 'on'
		},
		'one of two in parallel, the other far from its limit': {
			diagram: circuit({ a: ['battery', { continuousA: 500 }], b: ['battery', { continuousA: 50 }], l: ['load', { draw: 110 }] }, [
				['a.pos', 'l.pos', { gauge: '4/0' }],
				['a.neg', 'l.neg', { gauge: '4/0' }],
				['b.pos', 'l.pos', { gauge: '4/0' }],
				['b.neg', 'l.neg', { gauge: '4/0' }]
			]),
			says: 'More is drawn in “on” than the continuous limit allows: B 55 A of 50 A.',
			at: ['part:b'],
			severity: 'error'
		},
		'two in parallel, the worse first': {
			diagram: circuit({ a: ['battery', { continuousA: 50 }], b: ['battery', { continuousA: 40 }], l: ['load', { draw: 110 }] }, [
				['a.pos', 'l.pos', { gauge: '4/0' }],
				['a.neg', 'l.neg', { gauge: '4/0' }],
				['b.pos', 'l.pos', { gauge: '4/0' }],
				['b.neg', 'l.neg', { gauge: '4/0' }]
			]),
			says: 'More is drawn in “on” than the continuous limit allows: B 55 A of 40 A and A 55 A of 50 A.',
			at: ['part:b', 'part:a'],
			severity: 'error'
		}
	}
});
