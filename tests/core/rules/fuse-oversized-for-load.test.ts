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
			says: 'F is 30 A, more than three times the 9.9 A that L draws at most.',
			at: ['part:f', 'part:l'],
			severity: 'note'
		},
		'a start that does not need it: 19.9 A': {
			diagram: behind(30, 6.633, 3),
			says: 'F is 30 A, more than three times the 6.63 A that L draws at most.',
			at: ['part:f', 'part:l'],
			severity: 'note'
		}
	}
});
