import { breakerPolarity } from '../../../src/core/rules/breaker-polarity.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** Bank, breaker, then a load and a charger. */
const bank = (
	breaker: Record<string, boolean>,
	cases: Record<string, { loads: number; sources: number }>,
	[line, load] = ['q.in', 'q.out']
) =>
	circuit(
		{ b: ['battery', { capacityAh: 200 }], q: ['circuit-breaker', breaker], l: ['load', { draw: 20 }], s: ['mains-charger', { maxA: 30 }] },
		[
			['b.pos', line!],
			[load!, 'l.pos'],
			['l.neg', 'b.neg'],
			['s.pos', 'l.pos'],
			['s.neg', 'l.neg']
		],
		{ cases }
	);

const USE = { loads: 1, sources: 0 };
const CHARGE = { loads: 0, sources: 1 };

testRule(breakerPolarity, {
	valid: {
		'a breaker that is not polarised': bank({ polarised: false }, { use: USE, charge: CHARGE }),
		'a polarised one with current from line to load': bank({ polarised: true }, { use: USE }),
		'less than a hundredth of the rating the other way': bank({ polarised: true }, { use: USE, float: { loads: 0, sources: 0.015 } })
	},
	invalid: {
		'a polarised one between bank and bus, charged through it': {
			diagram: bank({ polarised: true }, { use: USE, charge: CHARGE }),
			says: 'Q is polarised, but carries 20 A from line to load in “use” and 30 A the other way in “charge”.',
			remedy: 'Use a breaker that is not polarised, or a fuse.',
			at: ['part:q'],
			severity: 'error',
			caseId: 'charge'
		},
		'the largest of each direction, whatever the order of the cases': {
			diagram: bank(
				{ polarised: true },
				{
					little: { loads: 0.25, sources: 0 },
					use: USE,
					half: { loads: 0, sources: 0.5 },
					charge: CHARGE,
					less: { loads: 0.5, sources: 0 }
				}
			),
			says: 'Q is polarised, but carries 20 A from line to load in “use” and 30 A the other way in “charge”.',
			at: ['part:q'],
			severity: 'error',
			caseId: 'charge'
		},
		'one connected the wrong way round': {
			diagram: bank({ polarised: true }, { use: USE }, ['q.out', 'q.in']),
			says: 'Q is polarised and connected the wrong way round: it carries 20 A from load to line in “use”.',
			remedy: 'Exchange the conductors at line and load.',
			at: ['part:q'],
			severity: 'error',
			caseId: 'use'
		}
	}
});
