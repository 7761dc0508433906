import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { voltageClassMismatch } from '../../../src/core/rules/voltage-class-mismatch.ts';

/** A lamp made for some voltage on a system of another, with a charger that sets the highest voltage. */
const fed = (madeForV: number | null, nominalV: 12 | 24 | 48, setV: number, sources = 1) =>
	circuit(
		{ b: ['battery', { nominalV }], c: ['mains-charger', { setV, maxA: 2000 }], l: ['load', { draw: 1, madeForV }] },
		[
			['b.pos', 'c.pos', { lengthM: 0.01 }],
			['c.neg', 'b.neg', { lengthM: 0.01 }],
			['c.pos', 'l.pos', { lengthM: 0.01 }],
			['c.neg', 'l.neg', { lengthM: 0.01 }]
		],
		{ nominalV, cases: { day: { label: 'By day', sources } } }
	);

// 16 V is the limit of what is made for 12 V, 9 V its least: common practice, no source.
/** Batteries of 12 V, joined one on the other as many as are asked for. */
const series = (count: number, nominalV: 12 | 24 | 48) =>
	circuit(
		Object.fromEntries(Array.from({ length: count }, (_, i) => [`b${i + 1}`, ['battery', { nominalV: 12 }]])) as never,
		Array.from({ length: count - 1 }, (_, i) => [`b${i + 1}.pos`, `b${i + 2}.neg`, { lengthM: 0.3 }]) as never,
		{ nominalV }
	);

testRule(voltageClassMismatch, {
	valid: {
		'four batteries of 12 V in series on 48 V': series(4, 48),
		'two of them on 24 V': series(2, 24),
		'one on 12 V': series(1, 12),
		'16 V on 12 V': circuit({ b1: ['battery', { nominalV: 12, emfV: 16 }] }),
		'9 V on 12 V': circuit({ b1: ['battery', { nominalV: 12, emfV: 9 }] }),
		'a device whose voltage is not given': fed(null, 24, 28.8),
		'12 V on 12 V while charging': fed(12, 12, 14.4),
		'24 V on 24 V while charging': fed(24, 24, 28.8),
		'just below the limit': fed(12, 12, 15.9),
		'lithium at rest, 13.2 V, on a device made for 17.5 V, which needs 13.125 V': fed(17.5, 12, 14.4)
	},
	invalid: {
		'one battery of 12 V on a system set to 48 V': {
			diagram: series(1, 48),
			says: 'No bank gives the 48 V of the system. The highest voltage of B1 is 13.2 V, at rest; every percentage and limit here is taken of 48 V.',
			at: ['part:b1'],
			severity: 'error'
		},
		'two of 12 V in series on a system set to 12 V': {
			diagram: series(2, 12),
			says: 'No bank gives the 12 V of the system. The highest voltage of B1 and B2 is 26.4 V, at rest; every percentage and limit here is taken of 12 V.',
			at: ['part:b1', 'part:b2'],
			severity: 'error'
		},
		'12 V on 24 V': {
			diagram: fed(12, 24, 28.8, 0),
			says: 'L is made for 12 V, at most 16 V, and gets 26.4 V with nothing on.',
			at: ['part:l'],
			severity: 'error',
			remedy: 'Feed it through a DC-DC converter, or use a device made for this voltage.'
		},
		'a charger that lifts the voltage too high': {
			diagram: fed(12, 12, 16.5),
			says: 'L is made for 12 V, at most 16 V, and gets 16.5 V in “By day”.',
			at: ['part:l'],
			severity: 'error',
			caseId: 'day'
		},
		'24 V on 12 V': {
			diagram: fed(24, 12, 14.4),
			says: 'L is made for 24 V, at least 18 V, and gets 13.2 V with nothing on.',
			at: ['part:l'],
			severity: 'error'
		},
		'lithium at rest, 13.2 V, just too low for what needs 13.5 V': {
			diagram: fed(18, 12, 14.4),
			says: 'L is made for 18 V, at least 13.5 V, and gets 13.2 V with nothing on.',
			at: ['part:l'],
			severity: 'error'
		}
	}
});
