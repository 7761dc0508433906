/**
 * ISO 8820-3: blade fuses break 1 kA; ISO 8820-5: strip fuses break 2 kA. By hand: 13.6 V behind 1.25 mΩ, a lithium
 * block of 200 Ah, is 10.9 kA.
 */
import { interruptCapacity } from '../../../src/core/rules/interrupt-capacity.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

type Params = Record<string, string | number | boolean | null | (number | null)[]>;

const BATTERIES = 'Resistance of batteries into a short, where not given, taken from chemistry and capacity.';

/** A first fuse on the post, then a bus with a circuit. */
const bank = (first: Params, position: Params = {}, battery: Params = { capacityAh: 200 }, lengthM = 5) =>
	circuit(
		{ b: ['battery', battery], f: ['fuse-block', first], d: ['fused-bus', { fuseA: [40, null, null, null], ...position }], l: ['load'] },
		[
			['f.post', 'd.L', { gauge: '2/0' }],
			['d.1', 'l.pos', { gauge: '8', lengthM }],
			['l.neg', 'b.neg', { gauge: '2/0', lengthM }]
		],
		{ mounts: { f: 'b.pos' } }
	);

const GOOD = { fuseA: 225, fuseBreakingA: 20_000 };

testRule(interruptCapacity, {
	valid: {
		'20 kA on the post and 10 kA behind': bank(GOOD, { fuseBreakingA: 10_000 }),
		'10.89 kA against 10.88 kA': bank({ fuseA: 225, fuseBreakingA: 10_890 }, { fuseBreakingA: 10_000 }),
		'2 kA behind a battery that gives less': bank(GOOD, {}, { capacityAh: 30 }),
		'a fuse above its voltage, which has no breaking capacity to compare': bank(GOOD, {}, { nominalV: 48, capacityAh: 20 }),
		'a blade fuse behind a converter, which limits itself': circuit(
			{ b: ['battery'], k: ['dcdc-converter', { maxA: 20 }], f: ['inline-fuse'], l: ['load'] },
			[
				['b.pos', 'k.in-pos'],
				['k.in-neg', 'b.neg'],
				['k.out-pos', 'f.in'],
				['f.out', 'l.pos'],
				['l.neg', 'k.out-neg']
			]
		)
	},
	invalid: {
		'a first fuse of 10 kA against 10.9 kA, from memory': {
			diagram: bank({ fuseA: 225 }, { fuseBreakingA: 10_000 }),
			says: 'F (terminal-mounted cube fuse) breaks up to 10 kA at 13.6 V; a dead short right behind it draws 10.9 kA. Nothing between it and the batteries can break that. A short draws too much on the first 0.22 m of W1 (2/0 AWG).',
			remedy:
				'Fit a type that breaks at least 10.9 kA there, such as Class T or an industrial fuse, or put one that does between there and the batteries.',
			at: ['part:f'],
			severity: 'error',
			source: 'IEC 60364-4-43 434.5.1; NFPA 70 110.9; makers’ sheets, from memory',
			unverified: true,
			assumptions: [BATTERIES]
		},
		'a bus fuse of 2 kA behind a first fuse that can break the short: a warning': {
			diagram: bank(GOOD),
			says: 'D (strip fuse SF51) breaks up to 2 kA at 13.6 V; a dead short right behind it draws 6.99 kA. A short draws too much on the first 1.18 m of W2 (8 AWG).',
			at: ['part:d'],
			severity: 'warning',
			unverified: false
		},
		'the same behind a first fuse that cannot: both are errors': {
			diagram: bank({ fuseA: 225, fuseBreakingA: 10_000 }),
			finds: [
				{
					says: 'F (terminal-mounted cube fuse) breaks up to 10 kA at 13.6 V; a dead short right behind it draws 10.9 kA. Nothing between it and the batteries can break that. A short draws too much on the first 0.22 m of W1 (2/0 AWG).',
					at: ['part:f'],
					severity: 'error'
				},
				{
					says: 'D (strip fuse SF51) breaks up to 2 kA at 13.6 V; a dead short right behind it draws 6.99 kA. Nothing between it and the batteries can break that. A short draws too much on the first 1.18 m of W2 (8 AWG).',
					at: ['part:d'],
					severity: 'error'
				}
			]
		},
		'10.87 kA against 10.88 kA, as given for the part': {
			diagram: bank({ fuseA: 225, fuseBreakingA: 10_870 }, { fuseBreakingA: 10_000 }, { capacityAh: 200, faultResistanceMilliohm: 1.25 }),
			says: 'F (terminal-mounted cube fuse) breaks up to 10.9 kA at 13.6 V; a dead short right behind it draws 10.9 kA. Nothing between it and the batteries can break that.',
			at: ['part:f'],
			severity: 'error',
			unverified: false
		},
		'a breaker whose capacity is not given': {
			diagram: circuit({ b: ['battery', { capacityAh: 200 }], q: ['circuit-breaker'], l: ['load'] }, [
				['b.pos', 'q.in', { lengthM: 0.1 }],
				['q.out', 'l.pos'],
				['l.neg', 'b.neg']
			]),
			says: 'The breaking capacity of Q is not given; a dead short right behind it draws 9.32 kA.',
			at: ['part:q'],
			severity: 'note'
		},
		'equal fuses on the posts of two batteries, once': {
			diagram: circuit(
				{
					b: ['battery', { capacityAh: 300 }],
					c: ['battery', { capacityAh: 300 }],
					f: ['fuse-block'],
					g: ['fuse-block'],
					p: ['positive-bus']
				},
				[
					['f.post', 'p.1', { gauge: '2/0' }],
					['g.post', 'p.2', { gauge: '2/0' }],
					['b.neg', 'c.neg', { gauge: '2/0' }]
				],
				{ mounts: { f: 'b.pos', g: 'c.pos' } }
			),
			says: 'F and G (terminal-mounted cube fuse) break up to 10 kA at 13.6 V; a dead short right behind them draws 16.3 kA. Nothing between them and the batteries can break that. A short draws too much on all of W1 (2/0 AWG) and all of W2 (2/0 AWG).',
			at: ['part:f', 'part:g'],
			severity: 'error'
		}
	}
});
