import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { missingLength } from '../../../src/core/rules/missing-length.ts';

const wired = (first: number | null, second: number | null) =>
	circuit({ b: ['battery'], l: ['load'] }, [
		['b.pos', 'l.pos', { lengthM: first }],
		['l.neg', 'b.neg', { lengthM: second, label: '' }]
	]);

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
		}
	}
});
