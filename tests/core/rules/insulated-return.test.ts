import { circuit, type CircuitOptions } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { insulatedReturn } from '../../../src/core/rules/insulated-return.ts';

const bonded = (options: CircuitOptions) =>
	circuit(
		{ b: ['battery'], h: ['chassis-point'], l: ['load'] },
		[
			['b.neg', 'h.stud'],
			['b.pos', 'l.pos'],
			['b.neg', 'l.neg']
		],
		options
	);

/** A hull is drawn, and the inverter’s case is bonded to it. */
const boat = (negativeSwitch: boolean, positiveSwitch = true, craft: 'boat' | 'vehicle' = 'boat') =>
	circuit(
		{ b: ['battery'], q: ['battery-disconnect'], r: ['battery-disconnect'], i: ['inverter'], h: ['chassis-point'] },
		[
			['b.pos', positiveSwitch ? 'q.in' : 'i.pos'],
			['q.out', 'i.pos'],
			['i.neg', negativeSwitch ? 'r.in' : 'b.neg'],
			['r.out', 'b.neg'],
			['i.case', 'h.stud']
		],
		{ craft, negative: 'insulated' }
	);

testRule(insulatedReturn, {
	valid: {
		'a bonded system with its bond': bonded({ negative: 'bonded' }),
		'an insulated system without metalwork': circuit({ b: ['battery'] }),
		'switches in both poles': boat(true),
		'a switch in one pole of a vehicle': boat(false, true, 'vehicle'),
		'no switch at all, which another rule asks for': boat(false, false),
		'a load that returns through the hull, told by the rule on that': circuit(
			{ b: ['battery'], h: ['chassis-point'], k: ['chassis-point'], l: ['load'] },
			[
				['b.neg', 'h.stud'],
				['b.pos', 'l.pos'],
				['l.neg', 'k.stud']
			],
			{ craft: 'boat', negative: 'insulated' }
		)
	},
	invalid: {
		'an insulated system with a bond': {
			diagram: bonded({ negative: 'insulated' }),
			says: 'The system is said to be insulated, but W1 joins its negative pole to the metalwork.',
			at: ['conductor:W1'],
			severity: 'error'
		},
		'a positive conductor on the hull': {
			diagram: circuit({ b: ['battery'], h: ['chassis-point'] }, [['b.pos', 'h.stud']], { negative: 'insulated' }),
			says: 'The system is said to be insulated, but W1 joins its positive pole to the metalwork.',
			at: ['conductor:W1'],
			severity: 'error'
		},
		'a switch in the positive only, on a metal hull': {
			diagram: boat(false),
			says: 'B is switched off in one pole only, in an insulated system on a metal hull.',
			at: ['part:b'],
			severity: 'warning'
		}
	}
});
