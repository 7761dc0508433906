/** 33 CFR 183.455(b): at the source of power, hence at each of two. Self-limited sources need no fuse: common practice, no source. */
import { twoSourceConductor } from '../../../src/core/rules/two-source-conductor.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** Start battery, combiner relay, house bus behind 300 A; the house end may have its own fuse, in position 3. */
const combined = (houseFuseA: number | null, profile = 'common-practice') =>
	circuit(
		{
			sb: ['battery', { chemistry: 'lead-acid', capacityAh: 90 }],
			sf: ['fuse-block', { fuseA: 100 }],
			k: ['combiner-relay'],
			hb: ['battery', { chemistry: 'lead-acid', capacityAh: 240 }],
			hf: ['fuse-block', { fuseA: 300 }],
			d: ['fused-bus', { fuseA: [150, null, houseFuseA, null] }]
		},
		[
			['sf.post', 'k.a', { gauge: '2', lengthM: 1.8 }],
			['k.b', houseFuseA === null ? 'd.R' : 'd.3', { gauge: '2', lengthM: 1.2 }],
			['hf.post', 'd.L', { gauge: '1/0', lengthM: 1.1 }],
			['hb.neg', 'sb.neg', { gauge: '2', lengthM: 2 }]
		],
		{ mounts: { sf: 'sb.pos', hf: 'hb.pos' }, profile }
	);

const charger = (fuseAtBattery: boolean) =>
	circuit(
		{ b: ['battery'], f: ['fuse-block', { fuseA: 60 }], m: ['mains-charger', { maxA: 30 }] },
		[
			[fuseAtBattery ? 'f.post' : 'b.pos', 'm.pos', { gauge: '8', lengthM: 2 }],
			['m.neg', 'b.neg', { gauge: '8', lengthM: 2 }]
		],
		{ mounts: { f: 'b.pos' } }
	);

testRule(twoSourceConductor, {
	valid: {
		'a fuse at both ends': combined(100),
		'a charger with a fuse at the battery': charger(true),
		'a fuse at the battery end that is too large, which is another fault': combined(250)
	},
	invalid: {
		'a combiner fused at the start battery only, one finding for both pieces': {
			diagram: combined(null),
			says: 'W2 (2 AWG) can be fed from both ends. At K bank b the current is limited by SF (100 A), at D end stud R only by HF (300 A), more than the 225 A allowed. The same goes for W1.',
			remedy: 'Fit a fuse or breaker of at most 225 A within 0.18 m of D end stud R as well, or limit what comes from there to 225 A.',
			at: ['conductor:W2', 'part:sf', 'conductor:W1'],
			severity: 'error'
		},
		'a charger straight on a battery, by numbers some of which are from memory': {
			diagram: { ...charger(false), profile: 'caravan' },
			says: 'W1 (8 AWG) can be fed from both ends. At M + the current is limited by M (30 A), at B + by nothing.',
			at: ['conductor:W1', 'part:m'],
			severity: 'error',
			unverified: true
		},
		'a charger straight on a battery': {
			diagram: charger(false),
			says: 'W1 (8 AWG) can be fed from both ends. At M + the current is limited by M (30 A), at B + by nothing.',
			remedy: 'Fit a fuse or breaker of at most 80 A within 1.83 m of B + as well.',
			at: ['conductor:W1', 'part:m'],
			severity: 'error',
			unverified: false
		},
		'a charger with its own fuse beside it and none at the bus': {
			diagram: circuit(
				{
					b: ['battery'],
					m: ['fuse-block', { fuseA: 250 }],
					d: ['fused-bus', { fuseA: [100, 80, null, null] }],
					l: ['load'],
					k: ['load'],
					f: ['inline-fuse', { fuseA: 60 }],
					c: ['mains-charger', { maxA: 40 }]
				},
				[
					['m.post', 'd.L', { gauge: '2/0' }],
					['d.1', 'l.pos', { gauge: '4' }],
					['d.2', 'k.pos', { gauge: '4' }],
					['d.R', 'f.in', { gauge: '6', lengthM: 6 }],
					['f.out', 'c.pos', { gauge: '6', lengthM: 0.2 }],
					['l.neg', 'b.neg', { gauge: '2/0' }],
					['k.neg', 'b.neg', { gauge: '2/0' }],
					['c.neg', 'b.neg', { gauge: '2/0' }]
				],
				{ mounts: { m: 'b.pos' } }
			),
			says: 'W4 (6 AWG) can be fed from both ends. At F in the current is limited by C (40 A), at D end stud R only by M (250 A), more than the 125 A allowed.',
			at: ['conductor:W4', 'part:c'],
			severity: 'error'
		},
		'two batteries, the only fuse at one of them': {
			diagram: circuit(
				{ b1: ['battery'], b2: ['battery'], f: ['fuse-block', { fuseA: 100 }] },
				[
					['f.post', 'b2.pos', { gauge: '4', lengthM: 3 }],
					['b1.neg', 'b2.neg', { gauge: '4', lengthM: 3 }]
				],
				{ mounts: { f: 'b1.pos' }, profile: 'us-small-craft' }
			),
			says: 'W1 (4 AWG) can be fed from both ends. At F post the current is limited by F (100 A), at B2 + by nothing.',
			remedy: 'Fit a fuse or breaker of at most 225 A within 1.83 m of B2 + as well.',
			at: ['conductor:W1', 'part:f'],
			severity: 'error',
			source: '33 CFR 183.455(a), (b): at each source of power; 33 CFR 183.455(c)(1); 33 CFR 183.425 Table 5, 105 °C column'
		}
	}
});
