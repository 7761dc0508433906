import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { alternatorConductor } from '../../../src/core/rules/alternator-conductor.ts';

const output = (maxA: number, sources = 0) =>
	circuit(
		{ g: ['alternator', { maxA }], f: ['inline-fuse', { family: 'strip-sf51', fuseA: 125 }], b: ['battery', { chemistry: 'lead-acid' }] },
		[
			['g.pos', 'f.in', { gauge: '6' }],
			['f.out', 'b.pos', { gauge: '2/0', lengthM: 0.1 }],
			['g.neg', 'b.neg', { gauge: '2/0' }]
		],
		{ profile: 'us-small-craft', cases: { rest: { loads: 0, sources } } }
	);

// 6 AWG of 105 °C: 120 A (33 CFR 183.425 Table 5).
testRule(alternatorConductor, {
	valid: {
		'as much as the conductor carries': output(120),
		'a conductor whose fuse is too large as well': circuit(
			{ g: ['alternator', { maxA: 200 }], b: ['battery', { chemistry: 'lead-acid' }] },
			[
				['g.pos', 'b.pos', { gauge: '10' }],
				['g.neg', 'b.neg', { gauge: '2/0' }]
			],
			{ profile: 'us-small-craft', cases: { rest: { loads: 0 } } }
		)
	},
	invalid: {
		'a little more, in no case shown': {
			diagram: output(120.1),
			says: 'W1 (6 AWG, 120 A) leads from G, which delivers up to 120 A.',
			at: ['conductor:W1', 'part:g'],
			severity: 'error'
		}
	}
});
