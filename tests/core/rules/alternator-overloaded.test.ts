import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { alternatorOverloaded } from '../../../src/core/rules/alternator-overloaded.ts';

const charged = (
	alternator: Record<string, number | boolean>,
	battery: Record<string, string | number> = {},
	wire: { gauge: string; lengthM: number } = { gauge: '2/0', lengthM: 1 }
) =>
	circuit({ g: ['alternator', alternator], b: ['battery', { capacityAh: 200, ...battery }] }, [
		['g.pos', 'b.pos', wire],
		['g.neg', 'b.neg', wire]
	]);

// A third of its capacity goes into a bank of 200 Ah: 66 A. Of the hot output 0.6 is borne for long. Common practice, no source.
testRule(alternatorOverloaded, {
	valid: {
		'110 A hot, of which 66 A is what it bears': charged({ hotA: 110 }),
		'a regulator that watches the heat': charged({ hotA: 50, heatSensed: true }),
		'lead-acid, which takes less and less': charged({ hotA: 50 }, { chemistry: 'lead-acid' }),
		'a long thin conductor that limits the current': charged({ hotA: 50 }, {}, { gauge: '6', lengthM: 26 })
	},
	invalid: {
		'109 A hot': {
			diagram: charged({ hotA: 109 }),
			says: 'B, nearly empty, takes about 66 A from G for hours; of its 109 A when hot, 65.4 A is what it bears for long.',
			at: ['part:g', 'part:b'],
			severity: 'warning'
		},
		'66 A hot': {
			diagram: charged({ hotA: 66 }),
			says: 'B, nearly empty, takes about 66 A from G for hours; of its 66 A when hot, 39.6 A is what it bears for long.',
			at: ['part:g', 'part:b'],
			severity: 'warning'
		},
		'65.9 A hot': {
			diagram: charged({ hotA: 65.9 }),
			says: 'B, nearly empty, takes about 66 A from G, which gives 65.9 A when hot.',
			at: ['part:g', 'part:b'],
			severity: 'error'
		},
		'90 A rated, and no hot output given': {
			diagram: charged({ maxA: 90 }),
			says: 'B, nearly empty, takes about 66 A from G, which gives 63 A when hot.',
			at: ['part:g', 'part:b'],
			severity: 'error'
		}
	}
});
