import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arrayConductors } from '../../../src/core/rules/array-conductors.ts';

const array = (iscA: number | null, inParallel = 1) =>
	circuit({ s: ['solar-controller', { moduleIscA: iscA, inParallel }], p: ['link-post'], n: ['link-post'] }, [
		['p.stud', 's.pv-pos', { gauge: '10' }],
		['n.stud', 's.pv-neg', { gauge: '12' }]
	]);

// 12 AWG of 105 °C: 45 A, 10 AWG 60 A (33 CFR 183.425 Table 5); 45 A / 1.5625 = 28.8 A.
testRule(arrayConductors, {
	valid: {
		'no current given': array(null),
		'28.8 A on 12 AWG': array(28.8),
		'two strings of 14.4 A': array(14.4, 2)
	},
	invalid: {
		'28.81 A on 12 AWG': {
			diagram: array(28.81),
			says: 'W2 (12 AWG, 45 A) carries the array of S: 1.56 times its short-circuit current is 45 A.',
			at: ['conductor:W2', 'part:s'],
			severity: 'error'
		},
		'both conductors, about the thinner': {
			diagram: array(39),
			says: 'W1 and W2 (12 AWG, 45 A) carry the array of S: 1.56 times its short-circuit current is 60.9 A.',
			at: ['conductor:W1', 'conductor:W2', 'part:s'],
			severity: 'error'
		},
		'two strings of 14.5 A': {
			diagram: array(14.5, 2),
			says: 'W2 (12 AWG, 45 A) carries the array of S: 1.56 times its short-circuit current is 45.3 A.',
			at: ['conductor:W2', 'part:s'],
			severity: 'error'
		}
	}
});
