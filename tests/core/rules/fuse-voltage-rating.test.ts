/** ISO 8820-5: strip fuses are made for 32 V. A 48 V lithium bank is charged to 57.6 V. */
import { fuseVoltageRating } from '../../../src/core/rules/fuse-voltage-rating.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** A bank of 16 cells at 52.8 V at rest, and a charger that goes up to `setV`. */
const station = (fuse: Record<string, string | number>, setV: number, cases = { rest: {} }) =>
	circuit(
		{ b: ['battery', { nominalV: 48 }], f: ['inline-fuse', fuse], s: ['solar-controller', { setV }], l: ['load'] },
		[
			['b.pos', 'f.in'],
			['f.out', 's.pos'],
			['s.pos', 'l.pos'],
			['l.neg', 's.neg'],
			['s.neg', 'b.neg']
		],
		{ nominalV: 48, cases }
	);

const bank24 = (setV: number) =>
	circuit(
		{ b: ['battery', { nominalV: 24 }], f: ['inline-fuse', { family: 'strip-sf51', fuseA: 100 }], s: ['mains-charger', { setV }] },
		[
			['b.pos', 'f.in'],
			['f.out', 's.pos'],
			['s.neg', 'b.neg']
		],
		{ nominalV: 24 }
	);

testRule(fuseVoltageRating, {
	valid: {
		'Class T on 48 V': station({ family: 'class-t', fuseA: 100 }, 57.6),
		'a given rating of 63.36 V above 57.6 V by 10 %': station({ family: 'strip-sf51', fuseA: 100, ratedV: 63.36 }, 57.6),
		'32 V strip fuses on 24 V, charged to 29 V': bank24(29),
		'a breaker whose voltage is not known': circuit({ b: ['battery', { nominalV: 48 }], q: ['circuit-breaker'], l: ['load'] }, [
			['b.pos', 'q.in'],
			['q.out', 'l.pos'],
			['l.neg', 'b.neg']
		])
	},
	invalid: {
		'32 V strip fuses on a 48 V bank, at the charger’s voltage though no case has it on': {
			diagram: station({ family: 'strip-sf51', fuseA: 100 }, 57.6),
			says: 'F (strip fuse SF51) is made for up to 32 V; the circuit reaches 57.6 V while charging or at rest.',
			remedy: 'Fit a type made for at least 57.6 V of direct current.',
			at: ['part:f'],
			severity: 'error',
			unverified: false
		},
		'the same, charged to 29.2 V': {
			diagram: bank24(29.2),
			says: 'F (strip fuse SF51) is made for up to 32 V, hardly more than the 29.2 V the circuit reaches while charging or at rest.',
			at: ['part:f'],
			severity: 'warning'
		},
		'58 V fuses that leave 0.7 %': {
			diagram: station({ family: 'strip-sf51', fuseA: 100, ratedV: 58 }, 57.6),
			says: 'F (strip fuse SF51) is made for up to 58 V, hardly more than the 57.6 V the circuit reaches while charging or at rest.',
			at: ['part:f'],
			severity: 'warning'
		},
		'a rating of just what the circuit reaches': {
			diagram: station({ family: 'strip-sf51', fuseA: 100, ratedV: 57.6 }, 57.6),
			says: 'F (strip fuse SF51) is made for up to 57.6 V, hardly more than the 57.6 V the circuit reaches while charging or at rest.',
			remedy: 'Fit a type made for a higher voltage of direct current.',
			at: ['part:f'],
			severity: 'warning'
		},
		'a rating just below the margin': {
			diagram: station({ family: 'strip-sf51', fuseA: 100, ratedV: 63.3 }, 57.6),
			says: 'F (strip fuse SF51) is made for up to 63.3 V, hardly more than the 57.6 V the circuit reaches while charging or at rest.',
			at: ['part:f'],
			severity: 'warning'
		},
		'a bank at rest, all fuses of a bus as one; makers’ ratings from memory': {
			diagram: circuit(
				{ b: ['battery', { nominalV: 48, emfV: 60 }], d: ['fused-bus', { fuseA: [50, 50, 50, null] }], f: ['fuse-block'], l: ['load'] },
				[
					['b.pos', 'd.L'],
					['d.1', 'l.pos'],
					['l.neg', 'b.neg']
				],
				{ mounts: { f: 'd.R' }, profile: 'us-small-craft', cases: { off: { loads: 0 } } }
			),
			finds: [
				{
					says: 'D positions 1, 2, 3 (strip fuse SF51) are made for up to 32 V; the circuit reaches 60 V while charging or at rest.',
					at: ['part:d'],
					severity: 'error',
					source: '33 CFR 183.455(d)',
					unverified: false
				},
				{
					says: 'F (terminal-mounted cube fuse) is made for up to 58 V; the circuit reaches 60 V while charging or at rest.',
					at: ['part:f'],
					severity: 'error',
					unverified: true
				}
			]
		}
	}
});
