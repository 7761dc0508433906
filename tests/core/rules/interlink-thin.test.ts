import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { interlinkThin } from '../../../src/core/rules/interlink-thin.ts';

const string = (link: string, lead = '2', draw = 20) =>
	circuit(
		{ a: ['battery'], b: ['battery'], l: ['load', { draw }] },
		[
			['a.pos', 'b.neg', { gauge: link }],
			['b.pos', 'l.pos', { gauge: lead }],
			['l.neg', 'a.neg', { gauge: lead }]
		],
		{ nominalV: 24 }
	);

testRule(interlinkThin, {
	valid: {
		'a link as thick as the leads': string('2'),
		'a thicker link': string('1'),
		'a link over its amperage, told by the rule on that': string('14', '2', 60),
		'one battery': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		])
	},
	invalid: {
		'a link one size thinner': {
			diagram: string('3'),
			says: 'W1 (3 AWG) links the batteries of A + B, whose leads are 2 AWG.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'warning'
		}
	}
});
