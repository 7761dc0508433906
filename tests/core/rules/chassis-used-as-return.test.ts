import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { chassisUsedAsReturn } from '../../../src/core/rules/chassis-used-as-return.ts';

const lamp = (draw: number, to: string, craft: 'vehicle' | 'boat' | 'cabin' = 'vehicle', profile = 'common-practice') =>
	circuit(
		{ b: ['battery'], l: ['load', { draw }], n: ['negative-bus'], c: ['chassis-point'], d: ['chassis-point'] },
		[
			['b.pos', 'l.pos'],
			['l.neg', to],
			['n.2', 'b.neg'],
			['n.3', 'c.stud']
		],
		{ craft, profile, negative: 'bonded' }
	);
const at = ['part:l'];

testRule(chassisUsedAsReturn, {
	valid: {
		'a return of its own': lamp(10, 'n.1'),
		'half an amp through the chassis': lamp(0.5, 'd.stud'),
		'no return at all, which is another fault': circuit({ b: ['battery'], l: ['load'], c: ['chassis-point'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'c.stud']
		])
	},
	invalid: {
		'a lamp on the chassis of a vehicle': {
			diagram: lamp(0.51, 'd.stud'),
			says: 'L has no other way back than the chassis: 0.51 A returns through metalwork.',
			at,
			severity: 'warning',
			caseId: 'on'
		},
		'one on the stud of the bond itself': {
			diagram: lamp(10, 'c.stud'),
			says: 'L has no other way back than the chassis: 10 A returns through metalwork.',
			at,
			severity: 'warning'
		},
		'the hull of a boat': {
			diagram: lamp(10, 'd.stud', 'boat'),
			says: 'L has no other way back than the chassis: 10 A returns through metalwork.',
			at,
			severity: 'error'
		},
		'an RV, where it is permitted': {
			diagram: lamp(10, 'd.stud', 'vehicle', 'rv-nec-552'),
			says: 'L has no other way back than the chassis: 10 A returns through metalwork.',
			at,
			severity: 'note',
			source: 'NFPA 70 552.10(B), which permits it'
		}
	}
});
