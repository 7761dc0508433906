import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { coverClearance } from '../../../src/core/rules/cover-clearance.ts';

/** A cover with a 12 mm slot: common practice, 2 AWG (11.7 mm) is about the thickest that leaves under it. */
const covered = (gauge: string, coverHeightMm: number | null = null) =>
	circuit({ d: ['fused-bus', { coverSlotMm: 12, coverHeightMm, endUsableMm: 40 }], l: ['load'] }, [['d.R', 'l.pos', { gauge }]]);

testRule(coverClearance, {
	valid: {
		'6 AWG under the cover': covered('6'),
		'2 AWG under the cover': covered('2'),
		'4/0 without a cover': circuit({ p: ['positive-bus'], l: ['load'] }, [['p.1', 'l.pos', { gauge: '4/0' }]]),
		// 2.8 + 1.6 + 2.0 + 6.8 = 13.2 mm and 2 mm of air.
		'a stack as high as the cover allows': covered('2', 15.2)
	},
	invalid: {
		'1/0 under the cover': {
			diagram: covered('1/0'),
			says: 'W1 (1/0 AWG, about 14.7 mm thick) does not pass the 12 mm slot of the cover over D end stud R.',
			at: ['stud:d.R', 'conductor:W1'],
			severity: 'warning'
		},
		'a nut almost at the cover': {
			diagram: covered('2', 15),
			says: 'The stack on D end stud R stands 13.2 mm high with its nut; the cover leaves 15 mm.',
			at: ['stud:d.R'],
			severity: 'warning',
			assumptions: ['A flat washer, a lock washer and a nut close the stack.']
		},
		'4/0, and too high as well': {
			// 4.8 + 1.6 + 2.0 + 6.8 = 15.2 mm.
			diagram: covered('4/0', 16),
			finds: [
				{
					says: 'W1 (4/0 AWG, about 20.3 mm thick) does not pass the 12 mm slot of the cover over D end stud R.',
					at: ['stud:d.R', 'conductor:W1'],
					severity: 'warning'
				},
				{
					says: 'The stack on D end stud R stands 15.2 mm high with its nut; the cover leaves 16 mm.',
					at: ['stud:d.R'],
					severity: 'warning'
				}
			]
		}
	}
});
