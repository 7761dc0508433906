import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { stringPathsUnequal } from '../../../src/core/rules/string-paths-unequal.ts';

/**
 * Two batteries of 5 mΩ on common studs, no fuses; leads of 1/0 AWG, 0.33418 mΩ/m and 0.04 mΩ a lug. Battery 1 has 1 m
 * in each pole, battery 2 as much as given.
 */
const bank = (
	secondM: number,
	options: { ah?: readonly [number, number]; milliohm?: number; levels?: Record<string, number>; draw?: number } = {}
) => {
	const { ah = [100, 100], milliohm = 5, levels = {}, draw = 100 } = options;
	return circuit(
		{
			b1: ['battery', { capacityAh: ah[0], resistanceMilliohm: milliohm }],
			b2: ['battery', { capacityAh: ah[1], resistanceMilliohm: milliohm }],
			p: ['link-post'],
			n: ['link-post', { pole: 'negative' }],
			l: ['load', { draw }]
		},
		[
			['b1.pos', 'p.stud', { gauge: '1/0', lengthM: 1 }],
			['b1.neg', 'n.stud', { gauge: '1/0', lengthM: 1 }],
			['b2.pos', 'p.stud', { gauge: '1/0', lengthM: secondM }],
			['b2.neg', 'n.stud', { gauge: '1/0', lengthM: secondM }],
			['p.stud', 'l.pos'],
			['l.neg', 'n.stud']
		],
		{ cases: { on: { label: 'All on', levels } } }
	);
};
const at = ['part:b1', 'part:b2'];

// By hand: R1 = 5 + 2·(0.33418 + 0.08) = 5.828 mΩ; R2 = 5 + 2·(0.33418·m + 0.08); share of 1 = R2/(R1 + R2).
testRule(stringPathsUnequal, {
	valid: {
		'leads of one length': bank(1),
		// R2 = 6.430: 52.45 %, 4.9 % more than half.
		'leads a little longer': bank(1.9),
		'one battery switched off on purpose': bank(10, { levels: { b1: 0 } }),
		'next to no current': bank(20, { draw: 1 }),
		// R2 = 6.497 + 5 at 50 Ah: 1 should carry two thirds, and carries 66 %.
		'half the capacity at twice the resistance': circuit(
			{
				b1: ['battery', { capacityAh: 100, resistanceMilliohm: 5 }],
				b2: ['battery', { capacityAh: 50, resistanceMilliohm: 10 }],
				l: ['load', { draw: 50, connection: 'studs' }]
			},
			[
				['b1.pos', 'l.pos', { gauge: '1/0' }],
				['b1.neg', 'l.neg', { gauge: '1/0' }],
				['b2.pos', 'l.pos', { gauge: '1/0' }],
				['b2.neg', 'l.neg', { gauge: '1/0' }]
			]
		)
	},
	invalid: {
		'more than 5 %: R2 = 6.497 mΩ, 52.7 %': {
			diagram: bank(2),
			says: 'In “All on” the strings share the current unequally: B1 52.7 A and B2 47.3 A. B1 carries 5.4 % more than its share.',
			at,
			severity: 'note',
			caseId: 'on'
		},
		'just below 10 %: R2 = 7.11 mΩ': {
			diagram: bank(2.917),
			says: 'In “All on” the strings share the current unequally: B1 55 A and B2 45 A. B1 carries 9.9 % more than its share.',
			at,
			severity: 'note'
		},
		'more than 10 %: R2 = 7.166 mΩ': {
			diagram: bank(3),
			says: 'In “All on” the strings share the current unequally: B1 55.1 A and B2 44.9 A. B1 carries 10.3 % more than its share.',
			at,
			severity: 'warning'
		},
		'more than 20 %: 0.8 mΩ batteries': {
			diagram: bank(2, { milliohm: 0.8 }),
			// R1 = 1.628, R2 = 2.297: 58.5 %.
			says: 'In “All on” the strings share the current unequally: B1 58.5 A and B2 41.5 A. B1 carries 17 % more than its share.',
			at,
			severity: 'warning'
		},
		'just more than an amp': {
			diagram: bank(2, { draw: 1.01 }),
			says: 'In “All on” the strings share the current unequally: B1 0.532 A and B2 0.478 A. B1 carries 5.4 % more than its share.',
			at,
			severity: 'note'
		},
		'far more': {
			diagram: bank(2.5, { milliohm: 0.8 }),
			// R2 = 2.631: 61.8 %.
			says: 'In “All on” the strings share the current unequally: B1 61.8 A and B2 38.2 A. B1 carries 23.5 % more than its share.',
			at,
			severity: 'error'
		}
	}
});
