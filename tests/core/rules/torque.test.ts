import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { torque } from '../../../src/core/rules/torque.ts';

const landed = (fromTorqueNm: number | null, other: { toTorqueNm?: number } = {}) =>
	circuit({ b: ['battery', { stud: 'M8' }], f: ['inline-fuse', { family: 'strip-sf51', thread: 'M6' }] }, [
		['b.pos', 'f.in', { fromTorqueNm, ...other }]
	]);

// 9 to 12 N·m on M8, 4 to 6 N·m on M6: common practice, no source.
testRule(torque, {
	valid: {
		'nothing recorded': landed(null),
		'the least and the greatest': landed(9, { toTorqueNm: 6 }),
		'a nut that holds two lugs, recorded with one': circuit({ b: ['battery'], l: ['load'], m: ['load'] }, [
			['b.pos', 'l.pos', { fromTorqueNm: 10 }],
			['b.pos', 'm.pos']
		])
	},
	invalid: {
		'a little more than the greatest': {
			diagram: landed(12.1, { toTorqueNm: 5 }),
			says: 'The nut over the lug of W1 on B + (M8) was tightened to 12.1 N·m; 9 to 12 N·m is usual.',
			at: ['conductor:W1', 'stud:b.pos'],
			severity: 'error'
		},
		'a little less than the least': {
			diagram: landed(8.9, { toTorqueNm: 5 }),
			says: 'The nut over the lug of W1 on B + (M8) was tightened to 8.9 N·m only; 9 to 12 N·m is usual.',
			at: ['conductor:W1', 'stud:b.pos'],
			severity: 'warning'
		},
		'one recorded of two': {
			diagram: landed(10),
			says: 'The torque of 1 nut is recorded, that of 1 is not: F in.',
			at: ['stud:f.in'],
			severity: 'note'
		}
	}
});
