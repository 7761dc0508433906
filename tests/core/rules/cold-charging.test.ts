import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { coldCharging } from '../../../src/core/rules/cold-charging.ts';

const charged = (params: Record<string, string | number>) =>
	circuit({ b: ['battery', params], c: ['mains-charger'] }, [
		['c.pos', 'b.pos'],
		['c.neg', 'b.neg']
	]);

// Lithium iron phosphate not below 0 °C: common practice, no source.
testRule(coldCharging, {
	valid: {
		'lithium down to 0 °C': charged({ coldestC: 0 }),
		'lithium that gets as cold as nobody knows': charged({}),
		'electronics that stop it': charged({ coldestC: -20, coldCutOff: 'stops' }),
		'a heated battery': charged({ coldestC: -20, coldCutOff: 'heated' }),
		'lead-acid in the frost': charged({ coldestC: -20, chemistry: 'lead-acid' }),
		'lithium made for it': charged({ coldestC: -10, minChargeC: -10 }),
		'a battery without a charger': circuit({ b: ['battery', { coldestC: -20 }] })
	},
	invalid: {
		'lithium down to a tenth below freezing': {
			diagram: charged({ coldestC: -0.1 }),
			says: 'It gets as cold as −0.1 °C at B, below the 0 °C down to which charging is allowed; nothing is known that keeps C from charging then.',
			at: ['part:b', 'part:c'],
			severity: 'warning'
		},
		'lead-acid with a limit of its own': {
			diagram: charged({ coldestC: -21, minChargeC: -20, chemistry: 'lead-acid' }),
			says: 'It gets as cold as −21 °C at B, below the −20 °C down to which charging is allowed; nothing is known that keeps C from charging then.',
			at: ['part:b', 'part:c'],
			severity: 'warning'
		},
		'both batteries of a string': {
			diagram: circuit(
				{ a: ['battery', { coldestC: -5 }], b: ['battery', { coldestC: -6 }], c: ['mains-charger', { setV: 28.8 }] },
				[
					['a.pos', 'b.neg'],
					['c.pos', 'b.pos'],
					['c.neg', 'a.neg']
				],
				{ nominalV: 24 }
			),
			says: 'It gets as cold as −5 °C at A and −6 °C at B, below the 0 °C down to which charging is allowed; nothing is known that keeps C from charging then.',
			at: ['part:a', 'part:b', 'part:c'],
			severity: 'warning'
		}
	}
});
