import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { inverterDrop } from '../../../src/core/rules/inverter-drop.ts';

/** Conductors of 6 AWG, 1.3435 mΩ/m and 0.08 mΩ of lugs, there and back, straight from a stiff battery. */
const inverter = (lengthM: number, options: { cutOffV?: number | null; milliohm?: number; surge?: number } = {}) => {
	const { cutOffV = null, milliohm = 1, surge } = options;
	return circuit(
		{ b: ['battery', { resistanceMilliohm: milliohm }], i: ['inverter', { watts: 900, efficiency: 0.9, cutOffV }] },
		[
			['b.pos', 'i.pos', { lengthM }],
			['i.neg', 'b.neg', { lengthM }]
		],
		{
			cases: {
				on: { label: 'All on' },
				...(surge === undefined ? {} : { start: { label: 'Start', duration: 'surge' as const, loads: surge } })
			}
		}
	);
};
const at = ['part:i'];

// 2000 W through 1 + 2·(1.3435 + 0.08) = 3.847 mΩ: (13.2 + √(13.2² − 4·2000·0.003847))/2 = 12.59 V.
// 3 % of 12 V is 0.36 V; about 78 A, so 4.6 mΩ: 1.66 m. Common practice, no source.
testRule(inverterDrop, {
	valid: {
		'less than 3 %': inverter(1.6),
		'more than 5 %, which the rule for all loads says': inverter(3),
		'a start that leaves 0.3 V': inverter(1, { cutOffV: 11.5, surge: 2 })
	},
	invalid: {
		'more than 3 %': {
			diagram: inverter(1.75),
			says: 'I loses 0.38 V, 3.2 %, on the way there and back in “All on”; 3 % is usual for an inverter.',
			at,
			severity: 'warning',
			caseId: 'on'
		},
		'in the case in which it loses most': {
			diagram: {
				...inverter(1.75),
				cases: circuit({}, [], { cases: { little: { loads: 0.5 }, on: { label: 'All on' }, less: { loads: 0.9 } } }).cases
			},
			says: 'I loses 0.38 V, 3.2 %, on the way there and back in “All on”; 3 % is usual for an inverter.',
			at,
			severity: 'warning',
			caseId: 'on'
		},
		'the start that leaves least': {
			diagram: {
				...inverter(1, { cutOffV: 12.5 }),
				cases: circuit({}, [], {
					cases: {
						none: { label: 'None', duration: 'surge', loads: 0 },
						soft: { label: 'Soft', duration: 'surge', loads: 1.5 },
						start: { label: 'Start', duration: 'surge', loads: 2 },
						half: { label: 'Half', duration: 'surge', loads: 1.2 }
					}
				}).cases
			},
			says: 'In “Start” I has 12.59 V left, and switches off below 12.5 V.',
			at,
			severity: 'error',
			caseId: 'start'
		},
		'a start that comes too near to where it switches off': {
			diagram: inverter(1, { cutOffV: 12.5, surge: 2 }),
			says: 'In “Start” I has 12.59 V left, and switches off below 12.5 V.',
			at,
			severity: 'error',
			caseId: 'start'
		}
	}
});
