/** ISO 8820-5 makes strip fuses from 30 A to 500 A. */
import { fuseValueNotStandard } from '../../../src/core/rules/fuse-value-not-standard.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

testRule(fuseValueNotStandard, {
	valid: {
		'usual ratings, and an empty position': circuit({
			d: ['fused-bus', { fuseA: [40, 500, 100, null] }],
			f: ['inline-fuse', { fuseA: 7.5 }]
		}),
		'a breaker, which has no type': circuit({ q: ['circuit-breaker', { ratingA: 47 }] })
	},
	invalid: {
		'values between and below the usual ones, once for each part': {
			diagram: circuit({ d: ['fused-bus', { fuseA: [20, 70, 20, 40] }], f: ['inline-fuse', { fuseA: 17 }] }),
			finds: [
				{
					says: '3 fuses of D: a strip fuse SF51 is not usually made for 20 A or 70 A.',
					remedy: 'Choose 40 A, 60 A or 80 A, or another type.',
					at: ['part:d'],
					severity: 'note',
					unverified: true
				},
				{
					says: 'F: a blade fuse, regular is not usually made for 17 A.',
					remedy: 'Choose 15 A or 20 A, or another type.',
					at: ['part:f'],
					severity: 'note'
				}
			]
		}
	}
});
