/** 33 CFR 183.455(b): 7 in, 40 in in a sheath; 183.460(a): 72 in of a battery. */
import { protectionTooFar } from '../../../src/core/rules/protection-too-far.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const LAW = { profile: 'us-small-craft' };

/** Off a bus behind 400 A of fuse, a thinner conductor with its own fuse at the far end. */
const tap = (tapM: number, sheathed = false, options = {}) =>
	circuit(
		{
			b: ['battery', { capacityAh: 400 }],
			m: ['fuse-block', { fuseA: 400 }],
			p: ['positive-bus'],
			f: ['inline-fuse', { fuseA: 100, family: 'strip-sf51' }],
			l: ['load', { draw: 40 }]
		},
		[
			['m.post', 'p.1', { gauge: '4/0' }],
			['p.2', 'f.in', { gauge: '4', lengthM: tapM, sheathed }],
			['f.out', 'l.pos', { gauge: '4' }],
			['l.neg', 'b.neg', { gauge: '4' }]
		],
		{ mounts: { m: 'b.pos' }, ...options }
	);

const lead = (leadM: number, options = {}) =>
	circuit(
		{ b: ['battery'], s: ['battery-disconnect'], f: ['inline-fuse', { fuseA: 100, family: 'strip-sf51' }], l: ['load'] },
		[
			['b.pos', 's.in', { gauge: '4', lengthM: leadM }],
			['s.out', 'f.in', { gauge: '4', lengthM: 0.5 }],
			['f.out', 'l.pos', { gauge: '4' }],
			['l.neg', 'b.neg', { gauge: '4' }]
		],
		options
	);

testRule(protectionTooFar, {
	valid: {
		'7 in off a bus': tap(0.1778, false, LAW),
		'40 in off a bus in a sheath': tap(1.016, true, LAW),
		'72 in from the battery, over two conductors and a switch': lead(1.3288, LAW)
	},
	invalid: {
		'a main fuse at the far end of the battery lead, loads and a charger beyond it': {
			diagram: circuit(
				{
					b: ['battery'],
					f: ['inline-fuse', { fuseA: 150, family: 'strip-sf51' }],
					d: ['fused-bus', { fuseA: [40, 40, null, null] }],
					l: ['load'],
					c: ['mains-charger', { maxA: 30 }]
				},
				[
					['b.pos', 'f.in', { gauge: '2', lengthM: 3 }],
					['f.out', 'd.L', { gauge: '2' }],
					['d.1', 'l.pos'],
					['d.2', 'c.pos'],
					['l.neg', 'b.neg'],
					['c.neg', 'b.neg']
				]
			),
			says: 'W1 (2 AWG) runs 3 m from B + to F, its first fuse or breaker; 1.83 m is allowed. On that length the current is limited by nothing.',
			at: ['conductor:W1', 'part:f'],
			severity: 'error'
		},
		'2.5 m off a bus': {
			diagram: tap(2.5),
			says: 'W2 (4 AWG) runs 2.5 m from P stud 2 to F, its first fuse or breaker; 0.18 m is allowed. On that length the current is limited only by M (400 A).',
			remedy: 'Move F to within 0.18 m of P stud 2, measured along the conductor.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: 'common practice, no source'
		},
		'0.5 m off a bus without a sheath': {
			diagram: tap(0.5, false, LAW),
			says: 'W2 (4 AWG) runs 0.5 m from P stud 2 to F, its first fuse or breaker; 0.18 m is allowed. On that length the current is limited only by M (400 A).',
			remedy: 'Move F to within 0.18 m of P stud 2, measured along the conductor; sheathed over its whole length it may be 1.02 m away.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: '33 CFR 183.455(b)(1), 7 in'
		},
		'40 in off a bus without a sheath, which in one would do': {
			diagram: tap(1.016, false, LAW),
			says: 'W2 (4 AWG) runs 1.02 m from P stud 2 to F, its first fuse or breaker; 0.18 m is allowed. On that length the current is limited only by M (400 A).',
			remedy: 'Move F to within 0.18 m of P stud 2, measured along the conductor; sheathed over its whole length it may be 1.02 m away.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			unverified: false
		},
		'the same by voluntary practice, whose wording was not seen': {
			diagram: tap(1.1, false, { profile: 'abyc-e11' }),
			says: 'W2 (4 AWG) runs 1.1 m from P stud 2 to F, its first fuse or breaker; 0.18 m is allowed. On that length the current is limited only by M (400 A).',
			remedy: 'Move F to within 0.18 m of P stud 2, measured along the conductor.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			unverified: true
		},
		'1.1 m off a bus in a sheath': {
			diagram: tap(1.1, true, LAW),
			says: 'W2 (4 AWG) runs 1.1 m from P stud 2 to F, its first fuse or breaker; 1.02 m is allowed. On that length the current is limited only by M (400 A).',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: '33 CFR 183.455(b)(2), 40 in'
		},
		'a battery lead longer than 72 in, one finding for both its pieces': {
			diagram: lead(2),
			says: 'W1 (4 AWG) runs 2.5 m from B + to F, its first fuse or breaker; 1.83 m is allowed. On that length the current is limited by nothing. The same goes for W2.',
			remedy: 'Move F to within 1.83 m of B +, measured along the conductor.',
			at: ['conductor:W1', 'part:f', 'conductor:W2'],
			severity: 'error'
		},
		'a battery lead of which only the second piece is beyond 72 in': {
			diagram: lead(1.5, LAW),
			says: 'W2 (4 AWG) runs 2 m from B + to F, its first fuse or breaker; 1.83 m is allowed. On that length the current is limited by nothing.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: '33 CFR 183.460(a), 72 in'
		}
	}
});
