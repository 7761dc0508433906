import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { lugsClash } from '../../../src/core/rules/lugs-clash.ts';

/** Two lugs of 24.2 mm (2/0 AWG) beside each other on a bus of some pitch. */
const bus = (pitchMm: number, second = 'n.2') =>
	circuit({ b: ['battery'], n: ['negative-bus', { pitchMm }], l: ['load', { connection: 'studs' }] }, [
		['b.pos', 'l.pos'],
		['b.neg', 'n.1', { gauge: '2/0' }],
		['l.neg', second, { gauge: '2/0' }]
	]);

// Lug widths: common practice, no source.
testRule(lugsClash, {
	valid: {
		'lugs that just fit': bus(24.2),
		'a stud free between them': bus(20, 'n.3'),
		'lugs on one stud, stacked': bus(20, 'n.1')
	},
	invalid: {
		'lugs a little too wide': {
			diagram: bus(24.1),
			says: 'On N stud 1 and stud 2 the lugs of W2 and W3 need 24.2 mm from stud to stud; there are 24.1 mm.',
			at: ['stud:n.1', 'stud:n.2'],
			severity: 'warning'
		}
	}
});
