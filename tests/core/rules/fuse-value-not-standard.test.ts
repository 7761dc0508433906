/** ISO 8820-5 makes strip fuses from 30 A to 500 A. */
import { fuseValueNotStandard } from '../../../src/core/rules/fuse-value-not-standard.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** On sale in 50 A: common practice, no source. */
const MADE_FOR_50 =
	'blade fuse, large, strip fuse SF30, bolt-down limiter, terminal-mounted cube fuse, Class T fuse or cylindrical or knife-blade industrial fuse';

const behind50A = (gauge: string) =>
	circuit({ b: ['battery'], d: ['fused-bus', { fuseA: [50, null, null, null] }], l: ['load'] }, [
		['b.pos', 'd.L', { gauge: '4/0' }],
		['d.1', 'l.pos', { gauge }],
		['l.neg', 'b.neg', { gauge: '4/0' }]
	]);

testRule(fuseValueNotStandard, {
	valid: {
		'usual ratings, and an empty position': circuit({
			d: ['fused-bus', { fuseA: [40, 500, 100, null] }],
			f: ['inline-fuse', { fuseA: 7.5 }]
		}),
		'a breaker, which has no type': circuit({ q: ['circuit-breaker', { ratingA: 47 }] })
	},
	invalid: {
		// 33 CFR 183.425 Table 5, 105 °C: 10 AWG carries 60 A; 16 AWG 25 A, and even 1.5 times that (183.455) is 37.5 A.
		'the ratings next to it, where the conductor allows both': {
			diagram: behind50A('10'),
			says: 'D: a strip fuse SF51 is not usually made for 50 A.',
			remedy: `Use a type made for 50 A (${MADE_FOR_50}), or 40 A or 60 A in the type fitted.`,
			at: ['part:d'],
			severity: 'note'
		},
		'another type alone, where both ratings next to it are above what the conductor allows': {
			diagram: behind50A('16'),
			says: 'D: a strip fuse SF51 is not usually made for 50 A.',
			remedy: `Use a type made for 50 A (${MADE_FOR_50}).`,
			at: ['part:d'],
			severity: 'note'
		},
		'values between and below the usual ones, once for each part': {
			diagram: circuit({ d: ['fused-bus', { fuseA: [20, 70, 20, 40] }], f: ['inline-fuse', { fuseA: 17 }] }),
			finds: [
				{
					says: 'D positions 1, 2, 3: a strip fuse SF51 is not usually made for 20 A or 70 A.',
					remedy: 'Use a type made for 20 A and 70 A (blade fuse, large), or 40 A, 60 A or 80 A in the type fitted.',
					at: ['part:d'],
					severity: 'note',
					unverified: true
				},
				{
					says: 'F: a blade fuse, regular is not usually made for 17 A.',
					remedy: 'Choose 15 A or 20 A in the type fitted, or another type.',
					at: ['part:f'],
					severity: 'note'
				}
			]
		}
	}
});
