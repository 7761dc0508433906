import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { missingLength } from '../../../src/core/rules/missing-length.ts';

const wired = (first: number | null, second: number | null) =>
	circuit({ b: ['battery'], l: ['load'] }, [
		['b.pos', 'l.pos', { lengthM: first }],
		['l.neg', 'b.neg', { lengthM: second, label: '' }]
	]);

/** Conductors of which so many have no length. */
const many = (all: number, without: number) =>
	circuit(
		{ b: ['battery'], p: ['positive-bus', { studs: 16 }] },
		Array.from({ length: all }, (_, index) => ['b.pos', `p.${index + 1}`, { lengthM: index < without ? null : 1 }] as const)
	);

testRule(missingLength, {
	valid: { 'measured conductors': wired(2, 0.5) },
	invalid: {
		'one conductor without a length': {
			diagram: wired(null, 0.5),
			says: 'No length is given for W1.',
			at: ['conductor:W1'],
			severity: 'note',
			remedy: 'Measure along the way the conductor will run, one way, and enter it. Until then 1 m is taken for it.'
		},
		'several, in one note': {
			diagram: wired(null, null),
			says: 'No length is given for W1 and unlabelled conductor from L − to B −.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'note'
		},
		'a fifth of ten': {
			diagram: many(10, 2),
			says: 'No length is given for W1 and W2.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'note'
		},
		'more than a fifth of ten': {
			diagram: many(10, 3),
			says: 'No length is given for W1, W2 and W3.',
			at: ['conductor:W1', 'conductor:W2', 'conductor:W3'],
			severity: 'warning'
		},
		'a third of nine, too few to speak of': {
			diagram: many(9, 3),
			says: 'No length is given for W1, W2 and W3.',
			at: ['conductor:W1', 'conductor:W2', 'conductor:W3'],
			severity: 'note'
		}
	}
});
