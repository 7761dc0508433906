import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { parallelConductors } from '../../../src/core/rules/parallel-conductors.ts';

const two = (first: string, second: string, lengths: readonly [number, number] = [1, 1], use: 'ordinary' | 'spare' = 'ordinary') =>
	circuit({ b: ['battery'], l: ['load', { draw: 100, connection: 'studs' }] }, [
		['b.pos', 'l.pos', { gauge: first, lengthM: lengths[0] }],
		['l.pos', 'b.pos', { gauge: second, lengthM: lengths[1], use }],
		['l.neg', 'b.neg', { gauge: '4/0' }]
	]);
const at = ['conductor:W1', 'conductor:W2'];

testRule(parallelConductors, {
	valid: {
		'two of 1/0 AWG and one length': two('1/0', '1/0'),
		'lengths within 5 %': two('2/0', '2/0', [1, 0.95]),
		'a capped spare': two('6', '6', [1, 1], 'spare')
	},
	invalid: {
		'lengths that differ by more': {
			diagram: two('1/0', '1/0', [1, 0.94]),
			// By hand: 0.33418 + 0.08 and 0.31413 + 0.08 mΩ share 100 A as 0.39413 : 0.41418.
			says: 'W1 and W2 lie in parallel and differ in size or length: W1 1/0 AWG 1 m (48.8 A) and W2 1/0 AWG 0.94 m (51.2 A).',
			at,
			severity: 'warning'
		},
		'sizes that differ': {
			diagram: two('4/0', '1/0'),
			// By hand: 0.16667 + 0.08 and 0.33418 + 0.08 mΩ.
			says: 'W1 and W2 lie in parallel and differ in size or length: W1 4/0 AWG 1 m (62.7 A) and W2 1/0 AWG 1 m (37.3 A).',
			at,
			severity: 'warning'
		},
		'two of 1 AWG': {
			diagram: two('1', '1'),
			says: 'W1 and W2 (1 AWG) lie in parallel; conductors thinner than 1/0 AWG should not share a current.',
			at,
			severity: 'warning',
			unverified: true
		}
	}
});
