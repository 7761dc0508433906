import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { lengthDoubt } from '../../../src/core/rules/length-doubt.ts';

const run = (lengthM: number | null, second = 1) =>
	circuit({ b: ['battery'], l: ['load'] }, [
		['b.pos', 'l.pos', { lengthM }],
		['l.neg', 'b.neg', { lengthM: second }]
	]);

testRule(lengthDoubt, {
	valid: { '30 m': run(30), 'no length': run(null) },
	invalid: {
		'a little more': { diagram: run(30.1), says: 'Longer than 30 m, up to 30.1 m: W1.', at: ['conductor:W1'], severity: 'note' },
		'both ways': {
			diagram: run(40, 50),
			says: 'Longer than 30 m, up to 50 m: W1 and W2.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'note'
		}
	}
});
