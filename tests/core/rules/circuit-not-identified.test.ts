import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { circuitNotIdentified } from '../../../src/core/rules/circuit-not-identified.ts';

const panel = (names: string[]) =>
	circuit({ b: ['battery'], p: ['blade-panel', { ways: 4, fuseA: [5, 5, 5, 5], names }], l: ['load'], m: ['load'] }, [
		['b.pos', 'p.feed'],
		['p.neg', 'b.neg'],
		['p.1', 'l.pos'],
		['l.neg', 'p.n1'],
		['p.3', 'm.pos'],
		['m.neg', 'p.n3']
	]);

testRule(circuitNotIdentified, {
	valid: {
		'names for the ways in use': panel(['lights', '', 'pump']),
		'parts without names': circuit({ b: ['battery'], l: ['load'] }, [['b.pos', 'l.pos']])
	},
	invalid: {
		'a way without a name': {
			diagram: panel(['lights', 'spare']),
			says: 'P way 3 feeds a circuit and has no name.',
			at: ['part:p'],
			severity: 'warning'
		},
		'a blank name and none': {
			diagram: panel([' ']),
			says: 'P way 1 and way 3 feed circuits and have no name.',
			at: ['part:p'],
			severity: 'warning'
		}
	}
});
