import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { caseBond } from '../../../src/core/rules/case-bond.ts';

const inverter = (gauge: string, bond: string | null) =>
	circuit({ b: ['battery'], i: ['inverter', { watts: 100 }], n: ['negative-bus'] }, [
		['b.pos', 'i.pos', { gauge }],
		['i.neg', 'n.1', { gauge }],
		['n.2', 'b.neg', { gauge }],
		...(bond === null ? [] : ([['i.case', 'n.3', { id: 'G', gauge: bond }]] as const))
	]);

testRule(caseBond, {
	valid: {
		'a bond as thick as the positive': inverter('4', '4'),
		'a bond one size below: 6 AWG under 4 AWG': inverter('4', '6'),
		'16 AWG below 16 AWG': inverter('16', '16'),
		'parts without a case stud': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		]),
		'one metric size below': inverter('35 mm²', '25 mm²')
	},
	invalid: {
		'no bond': {
			diagram: inverter('4', null),
			says: 'The case of I is bonded to nothing.',
			at: ['part:i'],
			severity: 'warning',
			unverified: true
		},
		'two sizes below': {
			diagram: inverter('4', '8'),
			says: 'G (8 AWG) bonds the case of I, whose positive conductor is 4 AWG; at least 6 AWG is asked for.',
			at: ['conductor:G', 'part:i'],
			severity: 'warning',
			remedy: 'Use at least 6 AWG for G.',
			unverified: true
		},
		'thinner than 16 AWG': {
			diagram: inverter('16', '18'),
			says: 'G (18 AWG) bonds the case of I, whose positive conductor is 16 AWG; at least 16 AWG is asked for.',
			at: ['conductor:G', 'part:i'],
			severity: 'warning'
		}
	}
});
