import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { wireAcrossPoles } from '../../../src/core/rules/wire-across-poles.ts';

const PARTS = { b: ['battery'], p: ['positive-bus'], n: ['negative-bus'], l: ['load'] } as const;
const LEADS = [
	['b.pos', 'p.1'],
	['n.1', 'b.neg'],
	['p.2', 'l.pos'],
	['l.neg', 'n.2']
] as const;

testRule(wireAcrossPoles, {
	valid: {
		'a load between the poles': circuit(PARTS, LEADS),
		'batteries in series': circuit({ b1: ['battery'], b2: ['battery'] }, [['b1.pos', 'b2.neg']]),
		'a ring on one pole': circuit(PARTS, [...LEADS, ['p.3', 'b.pos']]),
		'a conductor that returns to its own stud': circuit({ b: ['battery'] }, [['b.pos', 'b.pos']])
	},
	invalid: {
		'a conductor from post to post': {
			diagram: circuit({ b: ['battery'] }, [['b.pos', 'b.neg']]),
			says: 'W1, from B + to B −, joins the positive and the negative of B with no load between.',
			at: ['conductor:W1', 'part:b'],
			severity: 'fatal',
			remedy: 'Remove W1, or move the end that is on the wrong pole.'
		},
		'the conductor that joins studs of both poles, though others were drawn later': {
			diagram: circuit(PARTS, [
				['b.pos', 'p.1'],
				['p.3', 'n.3', { label: '' }],
				['n.1', 'b.neg']
			]),
			says: 'Unlabelled conductor from P stud 3 to N stud 3 joins the positive and the negative of B with no load between.',
			at: ['conductor:W2', 'part:b'],
			severity: 'fatal'
		},
		'two such conductors, each by itself': {
			diagram: circuit(PARTS, [...LEADS, ['p.3', 'n.3'], ['p.4', 'n.4']]),
			finds: [
				{
					says: 'W5, from P stud 3 to N stud 3, joins the positive and the negative of B with no load between.',
					at: ['conductor:W5', 'part:b'],
					severity: 'fatal'
				},
				{
					says: 'W6, from P stud 4 to N stud 4, joins the positive and the negative of B with no load between.',
					at: ['conductor:W6', 'part:b'],
					severity: 'fatal'
				}
			]
		},
		'a short through a fuse and a switch, across two batteries at once': {
			diagram: circuit({ b1: ['battery'], b2: ['battery'], f: ['inline-fuse'], s: ['battery-disconnect'] }, [
				['b1.pos', 'b2.pos'],
				['b1.neg', 'b2.neg'],
				['b1.pos', 's.in'],
				['s.out', 'f.in'],
				['f.out', 'b2.neg']
			]),
			says: 'W5, from F out to B2 −, joins the positive and the negative of B1 and B2 with no load between.',
			at: ['conductor:W5', 'part:b1', 'part:b2'],
			severity: 'fatal'
		},
		'the charger of a shorted rail': {
			diagram: circuit({ c: ['mains-charger'] }, [['c.pos', 'c.neg']]),
			says: 'W1, from C + to C −, joins the positive and the negative of C with no load between.',
			at: ['conductor:W1', 'part:c'],
			severity: 'fatal'
		}
	}
});
