import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { oneWayLengthDoubt } from '../../../src/core/rules/one-way-length-doubt.ts';

const pair = (positiveM: number | null, negativeM: number | null) =>
	circuit({ b: ['battery'], l: ['load'] }, [
		['b.pos', 'l.pos', { lengthM: positiveM }],
		['l.neg', 'b.neg', { lengthM: negativeM }]
	]);

testRule(oneWayLengthDoubt, {
	valid: {
		'equal lengths': pair(3, 3),
		'30 % more': pair(3.9, 3),
		'a short pair': pair(0.6, 0.2),
		'half a metre more': pair(1.1, 0.6),
		'a positive in two parts, with a switch between': circuit({ b: ['battery'], q: ['battery-disconnect'], l: ['load'] }, [
			['b.pos', 'q.in', { lengthM: 2 }],
			['q.out', 'l.pos', { lengthM: 2 }],
			['l.neg', 'b.neg', { lengthM: 4 }]
		]),
		'a length not given': pair(6, null),
		'a return through the chassis': circuit({ b: ['battery'], l: ['load'], c: ['chassis-point'] }, [
			['b.pos', 'l.pos', { lengthM: 7 }],
			['l.neg', 'c.stud', { lengthM: 1 }],
			['c.stud', 'b.neg']
		])
	},
	invalid: {
		'there and back in the positive': {
			diagram: pair(6, 3),
			says: 'W1 to L is 6 m long, W2 3 m; one of them may be the length there and back.',
			at: ['conductor:W1', 'conductor:W2', 'part:l'],
			severity: 'note'
		},
		'just more than half a metre': {
			diagram: pair(1.11, 0.6),
			says: 'W1 to L is 1.11 m long, W2 0.6 m; one of them may be the length there and back.',
			at: ['conductor:W1', 'conductor:W2', 'part:l'],
			severity: 'note'
		},
		'just more than 30 % in the negative': {
			diagram: pair(3, 3.91),
			says: 'W2 to L is 3.91 m long, W1 3 m; one of them may be the length there and back.',
			at: ['conductor:W2', 'conductor:W1', 'part:l'],
			severity: 'note'
		}
	}
});
