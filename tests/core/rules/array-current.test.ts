import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arrayCurrent } from '../../../src/core/rules/array-current.ts';

const array = (params: Record<string, number>) => circuit({ s: ['solar-controller', { setV: 14.4, maxA: 30, ...params }] });

// 1.25 for bright sun is from memory; 1.25 × 2 × 10 A = 25 A.
testRule(arrayCurrent, {
	valid: {
		'an array of which nothing is given': array({ maxPvA: 1 }),
		'no limit given': array({ moduleIscA: 100 }),
		'two strings of 10 A on 25 A': array({ moduleIscA: 10, inParallel: 2, maxPvA: 25 }),
		'a quarter more than the controller charges with': array({ arrayW: 540 })
	},
	invalid: {
		'two strings of 10 A on 24.9 A': {
			diagram: array({ moduleIscA: 10, inParallel: 2, maxPvA: 24.9 }),
			says: 'In bright sun the strings of S can deliver 25 A; S bears 24.9 A from its array.',
			at: ['part:s'],
			severity: 'error'
		},
		'a little more than a quarter more': {
			diagram: array({ arrayW: 541 }),
			says: 'S charges with 30 A at most; its array of 541 W could give 37.6 A.',
			at: ['part:s'],
			severity: 'note'
		},
		'too much of both, told once': {
			diagram: array({ moduleIscA: 30, maxPvA: 24.9, arrayW: 900 }),
			says: 'In bright sun the strings of S can deliver 37.5 A; S bears 24.9 A from its array.',
			at: ['part:s'],
			severity: 'error'
		}
	}
});
