import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { negativeSmallerThanPositive } from '../../../src/core/rules/negative-smaller-than-positive.ts';

const pair = (positive: string, negative: string, fuseA = 30) =>
	circuit({ b: ['battery'], f: ['inline-fuse', { fuseA }], l: ['load', { draw: 5 }] }, [
		['b.pos', 'f.in', { lengthM: 0.1 }],
		['f.out', 'l.pos', { id: 'P', gauge: positive }],
		['l.neg', 'b.neg', { id: 'N', gauge: negative }]
	]);

testRule(negativeSmallerThanPositive, {
	valid: {
		'a load without a positive': circuit({ b: ['battery'], l: ['load'] }, [['l.neg', 'b.neg', { gauge: '10' }]]),
		'a load without a negative': circuit({ b: ['battery'], l: ['load'] }, [['b.pos', 'l.pos', { gauge: '8' }]]),
		'both on the negative pole': circuit({ b: ['battery'], l: ['load'] }, [
			['b.neg', 'l.pos', { gauge: '8' }],
			['l.neg', 'b.neg', { gauge: '10' }]
		]),
		'both on the positive pole': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos', { gauge: '8' }],
			['l.neg', 'b.pos', { gauge: '10' }]
		]),
		'the same size': pair('10', '10'),
		'a thicker negative': pair('12', '10'),
		'5.26 mm² of 10 AWG over 6 mm²': pair('10', '6 mm²'),
		'one too thin for its fuse as well, which is another fault': pair('6', '14', 60)
	},
	invalid: {
		'a size less': {
			diagram: pair('8', '10'),
			says: 'N (10 AWG) is the return of L, whose positive is P (8 AWG).',
			at: ['conductor:N', 'conductor:P', 'part:l'],
			severity: 'warning'
		}
	}
});
