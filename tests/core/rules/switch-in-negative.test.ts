import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { switchInNegative } from '../../../src/core/rules/switch-in-negative.ts';

const switched = (positive: boolean, negative: boolean, system: 'bonded' | 'insulated') =>
	circuit(
		{
			b: ['battery'],
			l: ['load'],
			...(positive ? { p: ['battery-disconnect'] as const } : {}),
			...(negative ? { n: ['battery-disconnect'] as const } : {})
		},
		[
			...(positive
				? ([
						['b.pos', 'p.in'],
						['p.out', 'l.pos']
					] as const)
				: ([['b.pos', 'l.pos']] as const)),
			...(negative
				? ([
						['l.neg', 'n.in'],
						['n.out', 'b.neg']
					] as const)
				: ([['l.neg', 'b.neg']] as const))
		],
		{ negative: system }
	);

testRule(switchInNegative, {
	valid: {
		'a switch in the positive': switched(true, false, 'bonded'),
		'a switch in both': switched(true, true, 'bonded'),
		'an insulated system': switched(false, true, 'insulated'),
		'no switch at all': switched(false, false, 'bonded')
	},
	invalid: {
		'a switch in the negative alone': {
			diagram: switched(false, true, 'bonded'),
			says: 'N switches the negative only: with it open, everything positive stays live against the chassis.',
			at: ['part:n'],
			severity: 'error',
			source: 'common practice, no source; 46 CFR 120.380(b) for passenger vessels'
		}
	}
});
