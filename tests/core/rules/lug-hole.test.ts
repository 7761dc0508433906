import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { lugHole } from '../../../src/core/rules/lug-hole.ts';

const landed = (stud: 'M5' | 'M6' | 'M8' | '5/16' | '3/8', hole: 'M6' | 'M8' | 'M10' | '5/16' | '3/8' | null) =>
	circuit({ b: ['battery', { stud }], l: ['load'] }, [['b.pos', 'l.pos', { fromHole: hole, toHole: 'M8' }]]);

// Holes by ISO 273 fine (6.4, 8.4, 10.5 mm) on studs of 5, 6, 8 mm and 5/16 in (7.94 mm). Slack: common practice, no source.
testRule(lugHole, {
	valid: {
		'a hole for its stud': landed('M8', 'M8'),
		'a hole of which nothing is said': landed('M8', null),
		'M8 on 5/16, 0.46 mm': landed('5/16', 'M8')
	},
	invalid: {
		'M6 on an M8 stud': {
			diagram: landed('M8', 'M6'),
			says: 'The lug of W1 is made for M6 and does not go over the M8 stud B +.',
			at: ['conductor:W1', 'stud:b.pos'],
			severity: 'error'
		},
		'M10 on a 3/8 stud, 0.98 mm': {
			diagram: landed('3/8', 'M10'),
			says: 'The lug of W1 is made for M10 and has 0.98 mm of slack on the 3/8 in stud B +.',
			at: ['conductor:W1', 'stud:b.pos'],
			severity: 'warning'
		},
		'M6 on an M5 stud, 1.4 mm': {
			diagram: landed('M5', 'M6'),
			says: 'The lug of W1 is made for M6 and has 1.4 mm of slack on the M5 stud B +.',
			at: ['conductor:W1', 'stud:b.pos'],
			severity: 'error'
		}
	}
});
