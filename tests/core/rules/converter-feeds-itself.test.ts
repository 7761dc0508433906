import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { converterFeedsItself } from '../../../src/core/rules/converter-feeds-itself.ts';

const wires = (...pairs: [string, string][]) => pairs.map(([from, to]) => [from, to] as const);
const own = wires(['k.out-pos', 'k.in-pos'], ['k.out-neg', 'k.in-neg']);

testRule(converterFeedsItself, {
	valid: {
		'a converter on a battery': circuit(
			{ b: ['battery'], k: ['dcdc-converter'], l: ['load'] },
			wires(['b.pos', 'k.in-pos'], ['k.in-neg', 'b.neg'], ['k.out-pos', 'l.pos'], ['l.neg', 'k.out-neg'])
		),
		'one behind another, drawn before it': circuit(
			{ k: ['dcdc-converter'], j: ['dcdc-converter'], b: ['battery'] },
			wires(['b.pos', 'j.in-pos'], ['j.in-neg', 'b.neg'], ['j.out-pos', 'k.in-pos'], ['k.in-neg', 'j.out-neg'])
		),
		'one fed from outside the drawing': circuit(
			{ k: ['dcdc-converter', { inputFrom: 'outside' }], l: ['load'] },
			wires(['k.out-pos', 'l.pos'], ['l.neg', 'k.out-neg'])
		),
		'one that nothing feeds': circuit(
			{ b: ['battery'], k: ['dcdc-converter'], l: ['load'] },
			wires(['k.out-pos', 'l.pos'], ['l.neg', 'k.out-neg'])
		)
	},
	invalid: {
		'one joined to its own output': {
			diagram: circuit({ b: ['battery'], k: ['dcdc-converter'] }, own),
			says: 'K is fed by nothing but its own output.',
			remedy: 'Feed its input from a battery.',
			at: ['part:k'],
			severity: 'error'
		},
		'two that feed each other': {
			diagram: circuit(
				{ k: ['dcdc-converter'], j: ['dcdc-converter'] },
				wires(['k.out-pos', 'j.in-pos'], ['k.out-neg', 'j.in-neg'], ['j.out-pos', 'k.in-pos'], ['j.out-neg', 'k.in-neg'])
			),
			says: 'K and J are fed by nothing but one another.',
			remedy: 'Feed the input of one of them from a battery.',
			at: ['part:k', 'part:j'],
			severity: 'error'
		}
	}
});
