import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { busOverloaded } from '../../../src/core/rules/bus-overloaded.ts';

/** Two loads of 80 A; a bus rated 150 A carries 160 A only where both pass. */
const fed = (feed: string, ratedA = 150) =>
	circuit(
		{
			b: ['battery'],
			p: ['positive-bus', { ratedA }],
			n: ['negative-bus', { ratedA: 1000 }],
			l1: ['load', { draw: 80 }],
			l2: ['load', { draw: 80 }]
		},
		[
			['b.pos', feed, { gauge: '4/0' }],
			['p.3', 'l1.pos', { gauge: '2' }],
			['p.4', 'l2.pos', { gauge: '2' }],
			['l1.neg', 'n.2', { gauge: '2' }],
			['l2.neg', 'n.3', { gauge: '2' }],
			['n.1', 'b.neg', { gauge: '4/0' }]
		]
	);

testRule(busOverloaded, {
	valid: {
		'a bus within its rating': fed('p.1', 160.5),
		'a feed beside the circuits, so that they part on the bar': fed('p.3')
	},
	invalid: {
		'a feed at the far end': {
			diagram: fed('p.1'),
			says: 'P is rated 150 A and carries 160 A between stud 1 and stud 2.',
			at: ['part:p'],
			severity: 'error',
			caseId: 'on'
		},
		'the bar of a fused bus': {
			diagram: circuit(
				{
					b: ['battery'],
					d: ['fused-bus', { ratedA: 50, positions: 2, fuseA: [60, 60] }],
					l1: ['load', { draw: 40 }],
					l2: ['load', { draw: 40 }]
				},
				[
					['b.pos', 'd.L'],
					['d.1', 'l1.pos'],
					['d.2', 'l2.pos'],
					['l1.neg', 'b.neg'],
					['l2.neg', 'b.neg']
				]
			),
			says: 'D is rated 50 A and carries 80 A between end stud L and position 1.',
			at: ['part:d'],
			severity: 'error'
		}
	}
});
