import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { noReturn } from '../../../src/core/rules/no-return.ts';

testRule(noReturn, {
	valid: {
		'a load with both conductors': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		]),
		'a return over chassis that is bonded to the negative': circuit({ b: ['battery'], l: ['load'], x: ['chassis-point'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'x.stud'],
			['x.stud', 'b.neg']
		]),
		'a load across the upper battery of a string': circuit({ b1: ['battery'], b2: ['battery'], l: ['load'] }, [
			['b1.pos', 'b2.neg'],
			['b2.pos', 'l.pos'],
			['l.neg', 'b2.neg']
		]),
		'a load nobody has begun to connect': circuit({ b: ['battery'], l: ['load'] })
	},
	invalid: {
		'a load without a negative conductor': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [['b.pos', 'l.pos']]),
			says: 'L has a positive feed, but no conductor leads from its negative back to a source.',
			at: ['part:l'],
			severity: 'error',
			remedy: 'Add a negative conductor to the nearest negative bus with a free stud.'
		},
		'a whole negative bus that is not connected, once': {
			diagram: circuit({ b: ['battery'], n: ['negative-bus'], l1: ['load'], l2: ['load'] }, [
				['b.pos', 'l1.pos'],
				['b.pos', 'l2.pos'],
				['l1.neg', 'n.1'],
				['l2.neg', 'n.2']
			]),
			says: 'L1 and L2 have a positive feed, but no conductor leads from their negative back to a source.',
			at: ['part:l1', 'part:l2'],
			severity: 'error'
		},
		'a return to another system': {
			diagram: circuit({ b1: ['battery'], b2: ['battery'], l: ['load'] }, [
				['b1.pos', 'l.pos'],
				['l.neg', 'b2.neg']
			]),
			says: 'L has a positive feed, but no conductor leads from its negative back to a source.',
			at: ['part:l'],
			severity: 'error'
		},
		'both terminals on the positive pole': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [
				['b.pos', 'l.pos'],
				['b.pos', 'l.neg']
			]),
			says: 'Both terminals of L are on the positive pole, so it does not work.',
			at: ['part:l'],
			severity: 'error'
		}
	}
});
