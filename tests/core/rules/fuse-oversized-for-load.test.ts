import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { fuseOversizedForLoad } from '../../../src/core/rules/fuse-oversized-for-load.ts';

const behind = (fuseA: number, draw: number, surge = 0) =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA }], l: ['load', { draw }] },
		[
			['b.pos', 'f.in'],
			['f.out', 'l.pos'],
			['l.neg', 'b.neg']
		],
		{ cases: { on: {}, start: { duration: 'surge', loads: surge } } }
	);

// Three times the load, or one and a half times its start: common practice, no source.
testRule(fuseOversizedForLoad, {
	valid: {
		'three times the load': behind(30, 10),
		'a start that needs it: 20.1 A, and 30 A is less than 1.5 times that': behind(30, 6.7, 3),
		'a small fuse, however small the load': behind(5, 0.2),
		'nothing drawn at all': circuit(
			{ b: ['battery'], f: ['inline-fuse', { fuseA: 100 }], l: ['load'] },
			[
				['b.pos', 'f.in'],
				['f.out', 'l.pos'],
				['l.neg', 'b.neg']
			],
			{ cases: { off: { loads: 0 } } }
		)
	},
	invalid: {
		'more than three times the load': {
			diagram: behind(30, 9.9),
			says: 'More than three times what it feeds draws at most: F 30 A (L 9.9 A).',
			at: ['part:f', 'part:l'],
			severity: 'note'
		},
		'a start that does not need it: 19.9 A': {
			diagram: behind(30, 6.633, 3),
			says: 'More than three times what it feeds draws at most: F 30 A (L 6.63 A).',
			at: ['part:f', 'part:l'],
			severity: 'note'
		},
		'two ways of one panel': {
			diagram: circuit(
				{ b: ['battery'], p: ['blade-panel', { ways: 2, fuseA: [15, 20] }], l: ['load', { draw: 4 }], m: ['load', { draw: 5 }] },
				[
					['b.pos', 'p.feed'],
					['p.neg', 'b.neg'],
					['p.1', 'l.pos'],
					['l.neg', 'p.n1'],
					['p.2', 'm.pos'],
					['m.neg', 'p.n2']
				]
			),
			says: 'More than three times what they feed draws at most: P way 1 15 A (L 4 A) and P way 2 20 A (M 5 A).',
			at: ['part:p', 'part:l', 'part:m'],
			severity: 'note'
		}
	}
});
