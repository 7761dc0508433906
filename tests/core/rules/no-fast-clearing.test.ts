/** IEC 60364-4-43: a fault is over within 5 s and before the conductor suffers, I²t ≤ (k·S)². */
import { noFastClearing } from '../../../src/core/rules/no-fast-clearing.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const run = (gauge: string, lengthM: number, fuse: Record<string, string | number>, rest: Record<string, unknown> = {}) =>
	circuit({ b: ['battery', { emfV: 12.6, resistanceMilliohm: 5 }], f: ['inline-fuse', fuse], l: ['load', { draw: 1 }] }, [
		['b.pos', 'f.in', { gauge: '8', lengthM: 0.1 }],
		['f.out', 'l.pos', { gauge, lengthM, ...rest }],
		['l.neg', 'b.neg', { gauge, lengthM, ...rest }]
	]);

testRule(noFastClearing, {
	valid: {
		'a 20 A blade on a long 14 AWG run': run('14', 10, { fuseA: 20 }),
		'a blade fuse at a little more than twice its rating, which opens within 5 s': run('16', 12.2, { fuseA: 15 }),
		'a fuse too large for its conductor, which is a fault of its own': run('18', 10, { fuseA: 40 }),
		'a circuit behind a breaker, whose curve is not known': circuit(
			{ b: ['battery'], q: ['circuit-breaker', { ratingA: 20 }], l: ['load'] },
			[
				['b.pos', 'q.in', { gauge: '8', lengthM: 0.1 }],
				['q.out', 'l.pos', { gauge: '14', lengthM: 40 }],
				['l.neg', 'b.neg', { gauge: '14', lengthM: 40 }]
			]
		),
		'a rail fed by a converter alone': circuit(
			{ b: ['battery'], k: ['dcdc-converter', { maxA: 20 }], f: ['inline-fuse', { fuseA: 15 }], l: ['load'] },
			[
				['b.pos', 'k.in-pos'],
				['k.in-neg', 'b.neg'],
				['k.out-pos', 'f.in', { gauge: '14' }],
				['f.out', 'l.pos', { gauge: '14' }],
				['l.neg', 'k.out-neg', { gauge: '14' }]
			]
		),
		'a cranking supply': run('14', 40, { fuseA: 35 }, { use: 'cranking' })
	},
	invalid: {
		'16 AWG over 10 m behind 25 A': {
			diagram: run('16', 10, { fuseA: 25 }),
			says: 'A short at the far end of W2 (16 AWG) draws 37.3 A: F (25 A) may take 2.3 min; 5 s is the most allowed.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			unverified: true
		},
		'a blade fuse at a little less than twice its rating': {
			diagram: run('16', 12.6, { fuseA: 15 }),
			says: 'A short at the far end of W2 (16 AWG) draws 29.7 A: F (15 A) may take 5.6 s; 5 s is the most allowed.',
			remedy: 'Fit at most 10 A of the same type, or a thicker conductor for W2 and its return W3.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error'
		},
		'a run so long that its fuse holds the short': {
			diagram: run('16', 18, { fuseA: 25 }),
			says: 'A short at the far end of W2 (16 AWG) draws only 21 A: F (25 A) need not open at all.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error'
		},
		'a slow fuse on a thin conductor: the conductor suffers before it opens': {
			diagram: run('10', 6.2, { family: 'strip-sf51', fuseA: 60 }),
			says: 'A short at the far end of W2 (10 AWG) draws 216 A: F (60 A) may take 4.6 s; 4.5 s is the most the conductor stands.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error'
		}
	}
});
