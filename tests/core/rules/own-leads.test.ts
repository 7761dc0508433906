import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { ownLeads } from '../../../src/core/rules/own-leads.ts';

const lamp = (fuseA: number, ownLeads: string, fused = true) =>
	circuit({ b: ['battery'], f: ['inline-fuse', { family: 'cylindrical', fuseA }], l: ['load', { draw: 1, ownLeads }] }, [
		['b.pos', fused ? 'f.in' : 'l.pos', { lengthM: 0.1 }],
		['f.out', 'l.pos', { gauge: '10' }],
		['l.neg', 'b.neg', { gauge: '10' }]
	]);

// 18 AWG of 105 °C: 20 A (33 CFR 183.425 Table 5); the same and no next standard rating within 1.25 × that: 25 A.
testRule(ownLeads, {
	valid: {
		'20 A before leads of 18 AWG': lamp(20, '18'),
		'leads of which nothing is known': lamp(60, 'not-known'),
		'leads as thick as the cable': lamp(60, '10')
	},
	invalid: {
		'25 A before leads of 18 AWG': {
			diagram: lamp(25, '18'),
			says: 'L has leads of 18 AWG (20 A) behind F (25 A); at most 20 A is allowed for them.',
			at: ['part:l', 'part:f'],
			severity: 'warning'
		},
		'20.1 A before leads of 18 AWG': {
			diagram: lamp(20.1, '18'),
			says: 'L has leads of 18 AWG (20 A) behind F (20.1 A); at most 20 A is allowed for them.',
			at: ['part:l', 'part:f'],
			severity: 'warning'
		}
	}
});
