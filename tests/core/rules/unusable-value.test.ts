import type { Diagram, Part } from '#core/diagram';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { unusableValue } from '../../../src/core/rules/unusable-value.ts';

/** A file edited by hand: `circuit` would refuse these. */
const withParams = (params: Part['params']): Diagram => {
	const diagram = circuit({ s: ['shunt'] });
	return { ...diagram, parts: { s: { ...diagram.parts['s']!, params } } };
};

testRule(unusableValue, {
	valid: {
		'usable values': withParams({ ratedA: 300 }),
		'a part of unknown kind, whose values nobody knows': circuit({ u: ['fuel-cell', { anything: 'goes' }] })
	},
	invalid: {
		'a rating that is no rating': {
			diagram: withParams({ ratedA: -5 }),
			says: 'A value of S cannot be used. Rating: -5 is not a possible value, 500 is used.',
			at: ['part:s'],
			severity: 'warning'
		}
	}
});
