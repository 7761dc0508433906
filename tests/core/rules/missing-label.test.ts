import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { missingLabel } from '../../../src/core/rules/missing-label.ts';

const labelled = (first: string, second: string, draw: number) =>
	circuit({ b: ['battery'], l: ['load', { draw }] }, [
		['b.pos', 'l.pos', { label: first }],
		['l.neg', 'b.neg', { label: second }]
	]);

testRule(missingLabel, {
	valid: { 'labelled conductors': labelled('C1+', 'C1-', 5) },
	invalid: {
		'one without a label': {
			diagram: labelled('C1+', ' ', 5),
			says: 'The conductor from L − to B − has no label.',
			at: ['conductor:W2'],
			severity: 'warning'
		},
		'several, in one finding': {
			diagram: labelled('', '', 5),
			says: '2 conductors have no label, among them the conductor from B + to L +.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'warning'
		},
		'one amp is still little': {
			diagram: labelled('C1+', '', 1),
			says: 'The conductor from L − to B − has no label.',
			at: ['conductor:W2'],
			severity: 'note'
		},
		'more than an amp is not': {
			diagram: labelled('C1+', '', 1.01),
			says: 'The conductor from L − to B − has no label.',
			at: ['conductor:W2'],
			severity: 'warning'
		},
		'one that carries next to nothing': {
			diagram: labelled('C1+', '', 0.2),
			says: 'The conductor from L − to B − has no label.',
			at: ['conductor:W2'],
			severity: 'note'
		}
	}
});
