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
		'a bus at its rating': fed('p.1', 160),
		'a feed beside the circuits, so that they part on the bar': fed('p.3'),
		'a switch, a shunt and a fuse over their ratings: not a bus': circuit(
			{
				b: ['battery'],
				q: ['battery-disconnect', { ratedA: 50 }],
				f: ['inline-fuse', { fuseA: 40 }],
				s: ['shunt', { ratedA: 50 }],
				l: ['load', { draw: 100 }]
			},
			[
				['b.pos', 'q.in'],
				['q.out', 'f.in'],
				['f.out', 'l.pos'],
				['l.neg', 's.system'],
				['s.battery', 'b.neg']
			]
		)
	},
	invalid: {
		'a feed at the far end': {
			diagram: fed('p.1'),
			says: 'P is rated 150 A and carries 160 A between stud 1 and stud 2.',
			at: ['part:p'],
			severity: 'error',
			caseId: 'on'
		},
		'the hottest part of a bus, wherever it is': {
			diagram: circuit({ b: ['battery'], p: ['positive-bus', { ratedA: 100 }], l1: ['load', { draw: 60 }], l2: ['load', { draw: 60 }] }, [
				['p.1', 'l1.pos', { gauge: '2' }],
				['p.2', 'l2.pos', { gauge: '2' }],
				['b.pos', 'p.3', { gauge: '4/0' }],
				['l1.neg', 'b.neg', { gauge: '2' }],
				['l2.neg', 'b.neg', { gauge: '2' }]
			]),
			says: 'P is rated 100 A and carries 120 A between stud 2 and stud 3.',
			at: ['part:p'],
			severity: 'error'
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
