import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { stackOrder } from '../../../src/core/rules/stack-order.ts';

/** A feeder on an M8 end stud with a 46 A panel on the same stud; the rest, 209 A, goes along the bar. */
const feeder = (...items: string[]) =>
	circuit(
		{ b: ['battery'], d: ['fused-bus'], panel: ['load', { draw: 46 }], inv: ['load', { draw: 209 }], n: ['negative-bus'] },
		[
			['b.pos', 'd.L', { gauge: '4/0' }],
			['d.L', 'panel.pos', { gauge: '4' }],
			['d.1', 'inv.pos', { gauge: '2/0' }],
			['panel.neg', 'n.1'],
			['inv.neg', 'n.2', { gauge: '2/0' }],
			['n.3', 'b.neg', { gauge: '4/0' }]
		],
		{ stacks: { 'd.L': items } }
	);

/** A 12 A ring of 10 AWG and a 2 A ring of 16 AWG. */
const small = (...items: string[]) => rings(12, 2, '16', items);
const rings = (largeA: number, smallA: number, gauge: string, items: readonly string[]) =>
	circuit(
		{ b: ['battery'], p: ['positive-bus'], l1: ['load', { draw: largeA }], l2: ['load', { draw: smallA }] },
		[
			['b.pos', 'p.1'],
			['p.2', 'l1.pos', { gauge: '10' }],
			['p.2', 'l2.pos', { gauge }],
			['l1.neg', 'b.neg'],
			['l2.neg', 'b.neg']
		],
		{ stacks: { 'p.2': items } }
	);

// By hand, 20 µΩ a face on M8: feeder lowest 0.02e-3 × (209² + 46²) = 0.92 W, feeder on top 0.02e-3 × (209² + 255²) = 2.17 W.
testRule(stackOrder, {
	valid: {
		'the feeder lowest': feeder('W1', 'W2'),
		'the larger ring lowest': small('W2', 'W3'),
		'a large current on a ring as large': rings(12, 2, '10', ['W3', 'W2']),
		'less than 10 A on a smaller ring': rings(9.9, 1, '16', ['W3', 'W2']),
		'less than five times the current': rings(12, 2.5, '16', ['W3', 'W2']),
		'two terminals of nearly equal current, either way up': circuit(
			{ b: ['battery'], p: ['positive-bus'], l: ['load', { draw: 100 }] },
			[
				['b.pos', 'p.1', { gauge: '2' }],
				['p.1', 'l.pos', { gauge: '2' }],
				['l.neg', 'b.neg', { gauge: '2' }]
			],
			{ stacks: { 'p.1': ['W2', 'W1'] } }
		)
	},
	invalid: {
		'the feeder on top': {
			diagram: feeder('W2', 'W1'),
			says: 'The joints on D end stud L give off 2.2 W as stacked and 0.92 W in the best order.',
			at: ['stud:d.L'],
			severity: 'warning',
			remedy: 'From the seat up: 4/0 AWG lug of W1, 4 AWG lug of W2.',
			caseId: 'on'
		},
		'a large ring on a small one': {
			diagram: small('W3', 'W2'),
			says: 'On P stud 2 the 10 AWG ring of W2, which carries 12 A, lies on the smaller 16 AWG ring of W3, which carries 2 A.',
			at: ['stud:p.2'],
			severity: 'warning'
		},
		'10 A, five times the current of the smaller ring': {
			diagram: rings(10, 2, '16', ['W3', 'W2']),
			says: 'On P stud 2 the 10 AWG ring of W2, which carries 10 A, lies on the smaller 16 AWG ring of W3, which carries 2 A.',
			at: ['stud:p.2'],
			severity: 'warning'
		},
		'a twin block above a ring, both circuits through one plate': {
			diagram: circuit(
				{
					b: ['battery'],
					t: ['twin-fuse-block'],
					n: ['negative-bus'],
					l1: ['load', { draw: 90 }],
					l2: ['load', { draw: 90 }],
					l3: ['load', { draw: 1 }]
				},
				[
					['b.pos', 'l3.pos', { gauge: '14' }],
					['t.a', 'l1.pos', { gauge: '2' }],
					['t.b', 'l2.pos', { gauge: '2' }],
					['l1.neg', 'n.1', { gauge: '2' }],
					['l2.neg', 'n.2', { gauge: '2' }],
					['l3.neg', 'n.3', { gauge: '14' }],
					['n.4', 'b.neg', { gauge: '2/0' }]
				],
				{ mounts: { t: 'b.pos' }, stacks: { 'b.pos': ['W1', 'block t'] } }
			),
			// 0.02e-3 × (181² + 180²) = 1.30 W against 0.02e-3 × (181² + 1²) = 0.66 W.
			says: 'The joints on B + give off 1.3 W as stacked and 0.66 W in the best order.',
			at: ['stud:b.pos'],
			severity: 'warning',
			remedy: 'From the seat up: Fuse block T, 14 AWG ring of W1.'
		}
	}
});
