/** 33 CFR 183.455(c)(1): 150 % of Table 5 under 50 V. 100 % and the next standard rating up to 125 %: common practice, no source. */
import { oversizedProtection } from '../../../src/core/rules/oversized-protection.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const fused = (fuseA: number, conductor: Record<string, unknown>, options = {}) =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA, family: 'strip-sf51' }], l: ['load'] },
		[
			['b.pos', 'f.in', { gauge: '4/0', lengthM: 0.1 }],
			['f.out', 'l.pos', conductor],
			['l.neg', 'b.neg', { gauge: '4/0' }]
		],
		options
	);

/** Two batteries with a string fuse each, one main conductor in two pieces. */
const bank = (stringA: number, profile: string) =>
	circuit(
		{
			b1: ['battery', { capacityAh: 200 }],
			b2: ['battery', { capacityAh: 200 }],
			f1: ['fuse-block', { fuseA: stringA }],
			f2: ['fuse-block', { fuseA: stringA }],
			p: ['link-post'],
			s: ['battery-disconnect'],
			bus: ['fused-bus', { fuseA: [100, 100, null, null] }],
			l: ['load'],
			n: ['link-post']
		},
		[
			['f1.post', 'p.stud', { gauge: '2/0', lengthM: 0.45 }],
			['f2.post', 'p.stud', { gauge: '2/0', lengthM: 0.45 }],
			['p.stud', 's.in', { gauge: '4/0', lengthM: 0.4 }],
			['s.out', 'bus.L', { gauge: '4/0', lengthM: 0.5 }],
			['bus.1', 'l.pos', { gauge: '4' }],
			['l.neg', 'n.stud', { gauge: '4' }],
			['n.stud', 'b1.neg', { gauge: '2/0' }],
			['n.stud', 'b2.neg', { gauge: '2/0' }]
		],
		{ mounts: { f1: 'b1.pos', f2: 'b2.pos' }, profile }
	);

testRule(oversizedProtection, {
	valid: {
		'the amperage': fused(80, { gauge: '8' }),
		'the next standard rating up to 125 %: 300 A on 285 A': fused(300, { gauge: '1/0' }),
		'150 % by the law: 67.5 A on 45 A': fused(67.5, { gauge: '12' }, { profile: 'us-small-craft' }),
		'two string fuses that add up to the next standard rating: 450 A on 445 A': bank(225, 'common-practice'),
		'two string fuses that add up to less than 150 %: 600 A on 445 A': bank(300, 'us-small-craft'),
		'a charger that limits itself to the amperage': circuit({ m: ['mains-charger', { maxA: 40 }], l: ['load'] }, [
			['m.pos', 'l.pos', { gauge: '12' }],
			['l.neg', 'm.neg', { gauge: '12' }]
		])
	},
	invalid: {
		'70 A on 12 AWG, 45 A by Table 5': {
			diagram: fused(70, { gauge: '12' }),
			says: 'W2 (12 AWG, 45 A) is protected by F (70 A); at most 45 A is allowed (its amperage).',
			remedy: 'Fit at most 45 A, or use at least 8 AWG (80 A).',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: 'common practice, no source; 33 CFR 183.425 Table 5, 105 °C column'
		},
		'70 A on 12 AWG, by the law too: 1.5 × 45 A = 67.5 A': {
			diagram: fused(70, { gauge: '12' }, { profile: 'us-small-craft' }),
			says: 'W2 (12 AWG, 45 A) is protected by F (70 A); at most 67.5 A is allowed (1.5 × 45 A).',
			remedy: 'Fit at most 60 A, or use at least 10 AWG (60 A).',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: '33 CFR 183.455(c)(1); 33 CFR 183.425 Table 5, 105 °C column'
		},
		'a fuse that an engine space makes too large: 160 A × 0.85 = 136 A, next 150 A': {
			diagram: fused(160, { gauge: '4', environment: 'engine-space' }),
			says: 'W2 (4 AWG, 160 A × 0.85 (engine space) = 136 A) is protected by F (160 A); at most 150 A is allowed (the next standard rating above 136 A).',
			at: ['conductor:W2', 'part:f'],
			severity: 'error'
		},
		'two string fuses of 300 A, one finding for both pieces of the main conductor': {
			diagram: bank(300, 'common-practice'),
			says: 'W3 (4/0 AWG, 445 A) is fed in parallel through F1 and F2 (300 A + 300 A = 600 A); at most 450 A is allowed (the next standard rating above 445 A). The same goes for W4.',
			remedy: 'Fit devices that add up to at most 450 A, or one of at most 450 A at the start of W3.',
			at: ['conductor:W3', 'part:f1', 'part:f2', 'conductor:W4'],
			severity: 'error'
		},
		'a conductor that steps down after a splice': {
			diagram: circuit(
				{ b: ['battery'], f: ['fuse-block', { fuseA: 40 }], p: ['link-post'], l: ['load'] },
				[
					['f.post', 'p.stud', { gauge: '12' }],
					['p.stud', 'l.pos', { gauge: '18' }],
					['l.neg', 'b.neg', { gauge: '12' }]
				],
				{ mounts: { f: 'b.pos' } }
			),
			says: 'W2 (18 AWG, 20 A) is protected by F (40 A); at most 20 A is allowed (its amperage).',
			remedy: 'Fit at most 20 A, or use at least 12 AWG (45 A).',
			at: ['conductor:W2', 'part:f'],
			severity: 'error'
		},
		'one position of a distribution bus, by its name': {
			diagram: circuit(
				{ b: ['battery'], m: ['fuse-block', { fuseA: 250 }], bus: ['fused-bus', { fuseA: [60, 100, null, null] }], l: ['load'] },
				[
					['m.post', 'bus.L', { gauge: '2/0' }],
					['bus.2', 'l.pos', { gauge: '10' }],
					['l.neg', 'b.neg', { gauge: '4' }]
				],
				{ mounts: { m: 'b.pos' } }
			),
			says: 'W2 (10 AWG, 60 A) is protected by BUS position 2 (100 A); at most 60 A is allowed (its amperage).',
			at: ['conductor:W2', 'part:bus'],
			severity: 'error'
		}
	}
});
