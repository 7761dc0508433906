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
		'one metric size below': inverter('35 mm²', '25 mm²'),
		'a thicker negative, and thick conductors elsewhere': circuit(
			{ b: ['battery'], i: ['inverter', { watts: 100 }], n: ['negative-bus'] },
			[
				['b.pos', 'i.pos', { gauge: '6' }],
				['i.neg', 'n.1', { gauge: '1/0' }],
				['n.2', 'b.neg', { gauge: '4/0' }],
				['i.case', 'n.3', { gauge: '8' }]
			]
		),
		'two bonds, one of them thick enough': circuit({ b: ['battery'], i: ['inverter', { watts: 100 }], n: ['negative-bus'] }, [
			['b.pos', 'i.pos', { gauge: '6' }],
			['i.neg', 'n.1', { gauge: '6' }],
			['n.2', 'b.neg', { gauge: '6' }],
			['i.case', 'n.3', { gauge: '14' }],
			['i.case', 'n.3', { gauge: '8' }],
			['i.case', 'n.3', { gauge: '12' }]
		]),
		'a chassis point, which has nothing to supply': circuit({ b: ['battery'], c: ['chassis-point'] }, [['b.neg', 'c.stud']])
	},
	invalid: {
		'no bond': {
			diagram: inverter('4', null),
			says: 'The case of I is bonded to nothing.',
			remedy:
				'Run a conductor from its case stud to the chassis point or the negative bus, no more than one size below its positive conductor.',
			at: ['part:i'],
			severity: 'warning',
			unverified: true
		},
		'no bond at two cases': {
			diagram: circuit({ b: ['battery'], i: ['inverter', { watts: 100 }], j: ['inverter', { watts: 100 }] }, [
				['b.pos', 'i.pos'],
				['i.neg', 'b.neg'],
				['b.pos', 'j.pos'],
				['j.neg', 'b.neg']
			]),
			says: 'The case of I and J is bonded to nothing.',
			remedy:
				'Run a conductor from each case stud to the chassis point or the negative bus, no more than one size below the positive conductor.',
			at: ['part:i', 'part:j'],
			severity: 'warning'
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
