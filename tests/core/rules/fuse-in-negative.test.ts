import { fuseInNegative } from '../../../src/core/rules/fuse-in-negative.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const load = (negative: 'bonded' | 'insulated', device: 'inline-fuse' | 'circuit-breaker' = 'inline-fuse') =>
	circuit(
		{ b: ['battery'], f: [device], l: ['load'] },
		[
			['b.pos', 'l.pos'],
			['l.neg', 'f.in'],
			['f.out', 'b.neg']
		],
		{ negative }
	);

testRule(fuseInNegative, {
	valid: {
		'a fuse in the positive': circuit(
			{ b: ['battery'], f: ['inline-fuse'], l: ['load'] },
			[
				['b.pos', 'f.in'],
				['f.out', 'l.pos'],
				['l.neg', 'b.neg']
			],
			{ negative: 'bonded' }
		),
		'a fuse on the link between two blocks in series': circuit({ b: ['battery'], c: ['battery'], f: ['inline-fuse'], l: ['load'] }, [
			['b.neg', 'f.in'],
			['f.out', 'c.pos'],
			['b.pos', 'l.pos'],
			['l.neg', 'c.neg']
		])
	},
	invalid: {
		'a fuse in a bonded negative': {
			diagram: load('bonded'),
			says: 'F is a fuse in the negative, which is bonded here.',
			at: ['part:f'],
			severity: 'error',
			source: '46 CFR 120.380(b)'
		},
		'a breaker in an insulated one': {
			diagram: load('insulated', 'circuit-breaker'),
			says: 'F is a breaker in the negative. When it opens, its circuit is still live.',
			at: ['part:f'],
			severity: 'warning',
			source: 'common practice, no source'
		}
	}
});
