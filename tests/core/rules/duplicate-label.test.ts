import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { duplicateLabel } from '../../../src/core/rules/duplicate-label.ts';

const labelled = (first: string, second: string, part = 'L') =>
	circuit({ b: ['battery'], l: ['load', {}, { label: part }] }, [
		['b.pos', 'l.pos', { label: first }],
		['l.neg', 'b.neg', { label: second }]
	]);

testRule(duplicateLabel, {
	valid: {
		'a pair told apart by its sign': labelled('C4+', 'C4-'),
		'no labels at all': labelled('', ' '),
		'a conductor called like a part': labelled('L', 'C1')
	},
	invalid: {
		'one label on two conductors': {
			diagram: labelled('C4', ' C4'),
			says: 'The label “C4” is on 2 conductors.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'error',
			remedy: 'Give each of the conductors a label of its own.'
		},
		'labels that look alike when printed': {
			diagram: labelled('IO', 'i0'),
			says: 'The labels “IO” and “i0” of conductors cannot be told apart when printed.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'error'
		},
		'one label on two parts': {
			diagram: labelled('C1', 'C2', 'B'),
			says: 'The label “B” is on 2 parts.',
			at: ['part:b', 'part:l'],
			severity: 'error'
		}
	}
});
