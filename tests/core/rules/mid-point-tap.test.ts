import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { midPointTap } from '../../../src/core/rules/mid-point-tap.ts';

const string = (tap: readonly [string, string], kind: 'load' | 'mains-charger' = 'load', level = 1) =>
	circuit(
		{ b1: ['battery'], b2: ['battery'], t: kind === 'load' ? ['load', { draw: 3 }] : ['mains-charger', { maxA: 5 }] },
		[
			['b1.pos', 'b2.neg'],
			[tap[0], 't.pos'],
			['t.neg', tap[1]]
		],
		{ nominalV: 24, cases: { on: { loads: level } } }
	);

testRule(midPointTap, {
	valid: {
		'a load on the whole string': string(['b2.pos', 'b1.neg']),
		'batteries in parallel': circuit({ b1: ['battery'], b2: ['battery'], t: ['load'] }, [
			['b1.pos', 'b2.pos'],
			['b1.neg', 'b2.neg'],
			['b1.pos', 't.pos'],
			['t.neg', 'b1.neg']
		])
	},
	invalid: {
		'a load on the upper battery': {
			diagram: string(['b2.pos', 'b1.pos']),
			says: 'T (3 A) is connected between B1 and B2 of one string, so only part of the string serves it.',
			at: ['part:t', 'part:b1', 'part:b2'],
			severity: 'error'
		},
		'one that is never on': {
			diagram: string(['b1.pos', 'b1.neg'], 'load', 0),
			says: 'T is connected between B1 and B2 of one string, so only part of the string serves it.',
			at: ['part:t', 'part:b1', 'part:b2'],
			severity: 'error'
		},
		'a charger on the lower battery': {
			diagram: string(['b1.pos', 'b1.neg'], 'mains-charger'),
			says: 'T is connected between B1 and B2 of one string, so only part of the string serves it.',
			at: ['part:t', 'part:b1', 'part:b2'],
			severity: 'error'
		}
	}
});
