import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { studTooShort } from '../../../src/core/rules/stud-too-short.ts';

/**
 * One 2 AWG lug (2.8 mm, common practice) under washer (ISO 7089 M8: 1.6), spring washer (DIN 127 M8: 2.0) and nut
 * (ISO 4032 M8: 6.8): 6.4 mm under the nut, and 6.8 + 1.5 × 1.25 = 8.675 mm for it: 15.075 mm in all.
 */
const stud = (usableLengthMm: number, stack: readonly string[] = []) =>
	circuit({ p: ['positive-bus', { usableLengthMm }], l: ['load'] }, [['p.1', 'l.pos', { gauge: '2' }]], {
		stacks: stack.length > 0 ? { 'p.1': stack } : {}
	});

testRule(studTooShort, {
	valid: {
		'just thread enough': stud(15.075),
		'less thread, and no washers drawn': stud(12, ['W1', 'nut']),
		'a clamp': circuit({ l1: ['load'], l2: ['load'] }, [['l1.pos', 'l2.pos', { gauge: '4/0' }]]),
		'fuse, lug and hardware on the post of a block': circuit({ f: ['fuse-block'], l: ['load'] }, [['f.post', 'l.pos', { gauge: '2/0' }]])
	},
	invalid: {
		'a nut that is filled and no more': {
			diagram: stud(14),
			says: 'The thread of P stud 1 is too short. The stack takes 6.4 mm of its 14 mm (M8). The nut needs 8.68 mm; 7.6 mm of thread are left, 1.08 mm too little.',
			at: ['stud:p.1'],
			severity: 'warning',
			assumptions: ['A flat washer, a lock washer and a nut close the stack.']
		},
		'four fifths of the nut': {
			diagram: stud(11.84),
			says: 'The thread of P stud 1 is too short. The stack takes 6.4 mm of its 11.8 mm (M8). The nut needs 8.68 mm; 5.44 mm of thread are left, 3.24 mm too little.',
			at: ['stud:p.1'],
			severity: 'warning'
		},
		'a nut that is hardly filled': {
			diagram: stud(11),
			says: 'The thread of P stud 1 is too short. The stack takes 6.4 mm of its 11 mm (M8). The nut needs 8.68 mm; 4.6 mm of thread are left, 4.08 mm too little.',
			at: ['stud:p.1'],
			severity: 'error'
		},
		// 4/0 (4.8), 2/0 (3.8), block plate (3.0), 6 AWG (2.0), washer 1.6, lock washer 2.0: 17.2 mm.
		'four terminals that a drawing would call fine': {
			diagram: circuit(
				{ d: ['fused-bus', { endUsableMm: 20 }], a: ['link-post', { landings: 8 }], f: ['fuse-block'] },
				[
					['a.stud', 'd.L', { gauge: '4/0' }],
					['d.L', 'd.R', { gauge: '2/0' }],
					['d.L', 'd.R', { gauge: '6' }]
				],
				{ mounts: { f: 'd.L' }, stacks: { 'd.L': ['W1', 'W2', 'block f', 'W3', 'washer', 'lock-washer', 'nut'] } }
			),
			says: 'The thread of D end stud L is too short. The stack takes 17.2 mm of its 20 mm (M8). The nut needs 8.68 mm; 2.8 mm of thread are left, 5.88 mm too little.',
			at: ['stud:d.L'],
			severity: 'error',
			// 20 mm is also what an M8 stud usually has: the program cannot tell whether it was measured.
			assumptions: ['20 mm of usable thread, usual for M8, where it was not measured.']
		}
	}
});
