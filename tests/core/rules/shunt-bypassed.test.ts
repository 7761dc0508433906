import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { shuntBypassed } from '../../../src/core/rules/shunt-bypassed.ts';

const PARTS = { b: ['battery'], s: ['shunt'], n: ['negative-bus'], l: ['load', { draw: 30 }], c: ['mains-charger', { maxA: 30 }] } as const;
const LEADS = [
	['b.neg', 's.battery'],
	['s.system', 'n.1'],
	['b.pos', 'l.pos'],
	['c.pos', 'b.pos']
] as const;
const bank = (returnOfLoad: string, returnOfCharger: string) =>
	circuit(PARTS, [...LEADS, ['l.neg', returnOfLoad], ['c.neg', returnOfCharger]]);

testRule(shuntBypassed, {
	valid: {
		'all returns on the system side': bank('n.2', 'n.3'),
		'a starter battery whose negative is on the system side': circuit({ ...PARTS, e: ['battery'], m: ['load'] }, [
			...LEADS,
			['l.neg', 'n.2'],
			['c.neg', 'n.3'],
			['e.neg', 'n.4'],
			['e.pos', 'm.pos'],
			['m.neg', 'e.neg']
		]),
		'a shunt nobody has begun to connect': circuit(PARTS)
	},
	invalid: {
		'a load on the battery post': {
			diagram: bank('b.neg', 'n.3'),
			says: 'L returns to the battery side of S, which hides 30 A from the monitor.',
			at: ['conductor:W5', 'part:l', 'part:s'],
			severity: 'error',
			remedy: 'Move this return to the system side of S.'
		},
		'load and charger on the battery post, in one finding': {
			diagram: bank('b.neg', 'b.neg'),
			says: 'L and C return to the battery side of S, which hides 30 A from the monitor.',
			at: ['conductor:W5', 'part:l', 'conductor:W6', 'part:c', 'part:s'],
			severity: 'error'
		},
		'a conductor round the shunt': {
			diagram: circuit(PARTS, [...LEADS, ['l.neg', 'n.2'], ['b.neg', 'n.3']]),
			says: 'Current can go round S: its battery side and its system side are also joined by other conductors.',
			at: ['part:s'],
			severity: 'error'
		}
	}
});
