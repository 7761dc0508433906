import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { secondSourceMissing } from '../../../src/core/rules/second-source-missing.ts';

const fed = (battery: Record<string, string>, second: Record<string, string> | null = null, mustNotGoDark = true) =>
	circuit({ b: ['battery', battery], ...(second && { s: ['battery', second] as const }), l: ['load', { mustNotGoDark }] }, [
		['b.pos', 'l.pos'],
		['b.neg', 'l.neg'],
		...(second
			? ([
					['s.pos', 'l.pos'],
					['s.neg', 'l.neg']
				] as const)
			: [])
	]);
const lead = { chemistry: 'lead-acid' };

testRule(secondSourceMissing, {
	valid: {
		'a lead-acid battery': fed(lead),
		'lithium that does not switch off': fed({ switchesOff: 'no' }),
		'a load that may go dark': fed({}, null, false),
		'lithium that warns, beside lead-acid': fed({ warnsFirst: 'yes' }, lead)
	},
	invalid: {
		'lithium alone': {
			diagram: fed({}),
			says: 'L must not go dark, but is fed only by B, whose electronics can switch off.',
			at: ['part:l', 'part:b'],
			severity: 'warning'
		},
		'lithium that warns, alone': {
			diagram: fed({ warnsFirst: 'yes' }),
			says: 'L must not go dark, but is fed only by B, whose electronics can switch off.',
			at: ['part:l', 'part:b'],
			severity: 'warning'
		},
		'lead-acid with electronics': {
			diagram: fed({ ...lead, switchesOff: 'yes' }),
			says: 'L must not go dark, but is fed only by B, whose electronics can switch off.',
			at: ['part:l', 'part:b'],
			severity: 'warning'
		},
		'lithium beside lead-acid, without a warning': {
			diagram: fed({}, lead),
			says: 'B can switch off without a warning, and L loses its main source.',
			at: ['part:l', 'part:b'],
			severity: 'note'
		},
		'two loads, one behind a converter': {
			diagram: circuit(
				{
					b: ['battery', { nominalV: 24 }],
					c: ['dcdc-converter', { setV: 12 }],
					l: ['load', { mustNotGoDark: true }],
					m: ['load', { mustNotGoDark: true }]
				},
				[
					['b.pos', 'c.in-pos'],
					['b.neg', 'c.in-neg'],
					['c.out-pos', 'l.pos'],
					['c.out-neg', 'l.neg'],
					['b.pos', 'm.pos'],
					['b.neg', 'm.neg']
				],
				{ nominalV: 24 }
			),
			says: 'L and M must not go dark, but are fed only by B, whose electronics can switch off.',
			at: ['part:l', 'part:m', 'part:b'],
			severity: 'warning'
		}
	}
});
