import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { secondBond } from '../../../src/core/rules/second-bond.ts';

/** Two buses joined by a conductor, each with a bond: the metalwork lies in parallel with the joint between them. */
const twice = (draw: number, second = true) =>
	circuit(
		{
			b: ['battery'],
			l: ['load', { draw }],
			n: ['negative-bus'],
			m: ['negative-bus'],
			c: ['chassis-point'],
			d: ['chassis-point']
		},
		[
			['b.pos', 'l.pos'],
			['l.neg', 'm.1'],
			['m.2', 'n.1', { gauge: '6', lengthM: 3 }],
			['n.2', 'b.neg'],
			['n.3', 'c.stud', { id: 'G1' }],
			...(second ? ([['m.3', 'd.stud', { id: 'G2' }]] as const) : [])
		],
		{ negative: 'bonded' }
	);

// By hand: 3 m of 6 AWG, 3·1.3435 + 0.08 = 4.11 mΩ; bonds and metalwork 2·(1.3435 + 0.08) + 2·1.5 = 5.85 mΩ: 41.3 % by the chassis.
testRule(secondBond, {
	valid: {
		'one bond': twice(50, false),
		'two bonds that carry less than 1 A': twice(2.4),
		'a load that needs the chassis, which is another fault': circuit(
			{ b: ['battery'], l: ['load', { draw: 20 }], c: ['chassis-point'], d: ['chassis-point'] },
			[
				['b.pos', 'l.pos'],
				['l.neg', 'c.stud'],
				['d.stud', 'b.neg']
			]
		)
	},
	invalid: {
		'two bonds with a load between them': {
			diagram: twice(50),
			says: 'G1 and G2 bond the negative to the chassis in more than one place, and up to 20.6 A flows through the metalwork between them.',
			at: ['conductor:G1', 'conductor:G2'],
			severity: 'warning',
			caseId: 'on'
		},
		'a little more than 1 A': {
			diagram: twice(2.45),
			says: 'G1 and G2 bond the negative to the chassis in more than one place, and up to 1.01 A flows through the metalwork between them.',
			at: ['conductor:G1', 'conductor:G2'],
			severity: 'warning'
		}
	}
});
