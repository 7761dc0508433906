import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { unknownPartKind } from '../../../src/core/rules/unknown-part-kind.ts';

testRule(unknownPartKind, {
	valid: { 'known parts': circuit({ b: ['battery'], l: ['load'] }) },
	invalid: {
		'parts from a newer version, one finding for each kind': {
			diagram: circuit({ a: ['fuel-cell'], b: ['battery'], c: ['fuel-cell', {}, { label: '' }], d: ['constructor'] }),
			finds: [
				{
					says: 'A and c of kind “fuel-cell” cannot be checked: this version has no such kind of part.',
					at: ['part:a', 'part:c'],
					severity: 'warning'
				},
				{ says: 'D of kind “constructor” cannot be checked: this version has no such kind of part.', at: ['part:d'], severity: 'warning' }
			]
		}
	}
});
