/** NEETS (US Navy training series): a fuse for 10 A of normal current is 12.5 A, hence 80 % of the rating. */
import { fuseBelowLoad } from '../../../src/core/rules/fuse-below-load.ts';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const fused = (fuseA: number, draw: number, options: CircuitOptions = {}) =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA }], l: ['load', { draw }] },
		[
			['b.pos', 'f.in', { lengthM: 0.1 }],
			['f.out', 'l.pos'],
			['l.neg', 'b.neg']
		],
		options
	);

testRule(fuseBelowLoad, {
	valid: {
		'10 A through 12.5 A': fused(12.5, 10),
		'a start of 30 A through 15 A, which is a surge': fused(15, 30, { cases: { start: { duration: 'surge' } } }),
		'a load that is off': fused(10, 20, { cases: { off: { loads: 0 } } })
	},
	invalid: {
		'10 A through 12 A': {
			diagram: fused(12, 10),
			says: 'F is a 12 A fuse and carries 10 A continuously in "on", more than 80 % of its rating.',
			remedy: 'Fit at least 15 A if the conductors allow it; otherwise thicker conductors with it.',
			at: ['part:f'],
			severity: 'warning',
			source: 'common practice, no source',
			caseId: 'on'
		},
		'188 A through one string fuse of 150 A': {
			diagram: circuit(
				{ b: ['battery', { capacityAh: 300 }], f: ['fuse-block', { fuseA: 150 }], l: ['load', { draw: 188 }] },
				[
					['f.post', 'l.pos', { gauge: '4/0' }],
					['l.neg', 'b.neg', { gauge: '4/0' }]
				],
				{ mounts: { f: 'b.pos' } }
			),
			says: 'F is a 150 A fuse and carries 188 A continuously in "on": it will open.',
			remedy: 'Fit at least 250 A if the conductors allow it; otherwise thicker conductors with it.',
			at: ['part:f'],
			severity: 'error'
		},
		'a breaker, in the case that is worst': {
			diagram: circuit(
				{ b: ['battery'], f: ['circuit-breaker', { ratingA: 20 }], k: ['load', { draw: 10 }], l: ['load', { draw: 8 }] },
				[
					['b.pos', 'f.in', { lengthM: 0.1 }],
					['f.out', 'k.pos'],
					['f.out', 'l.pos'],
					['k.neg', 'b.neg'],
					['l.neg', 'b.neg']
				],
				{ cases: { day: { levels: { k: 0 } }, night: {} } }
			),
			says: 'F is a 20 A breaker and carries 18 A continuously in "night", more than 80 % of its rating.',
			at: ['part:f'],
			severity: 'warning',
			caseId: 'night'
		}
	}
});
