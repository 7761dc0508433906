/**
 * ABYC E-11 (voluntary): 3 % for circuits where the drop must be kept small, 10 % for the others; 46 CFR 169.672: 10 %.
 * Hand figures: I × L × 0.01787 Ω·mm²/m ÷ A there and back (ABYC E-11's 10.75 Ω·cmil/ft), 0.2 mΩ a joint below 6 AWG
 * and 0.04 mΩ from it, 0.08 V ÷ rating for a fuse: common practice, no source.
 */
import { voltageDrop } from '../../../src/core/rules/voltage-drop.ts';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** One fused circuit straight from the post of a battery. */
const fed = (gauge: string, lengthM: number, load: Record<string, never | number | string | boolean>, options: CircuitOptions = {}) =>
	circuit(
		{ b: ['battery', { capacityAh: 200 }], f: ['fuse-block', { fuseA: 50 }], l: ['load', load] },
		[
			['f.post', 'l.pos', { gauge, lengthM }],
			['l.neg', 'b.neg', { gauge, lengthM }]
		],
		{ mounts: { f: 'b.pos' }, ...options }
	);

testRule(voltageDrop, {
	valid: {
		// 8.5 A × (14 m × 2.135 mΩ/m + 4 × 0.2 mΩ + 1.6 mΩ) = 0.274 V, 2.3 %
		'a bilge pump of 8.5 A, 7 m away, on 8 AWG': fed('8', 7, { draw: 8.5, critical: true }),
		// 8.5 A × (14 m × 8.587 mΩ/m + 0.8 mΩ + 1.6 mΩ) = 1.042 V, 8.7 %: less than 10 %
		'the same on 14 AWG as an ordinary circuit by the law': fed('14', 7, { draw: 8.5 }, { profile: 'us-small-craft' }),
		'a circuit that is off': fed('14', 7, { draw: 8.5, critical: true }, { cases: { off: { loads: 0 } } }),
		'a start of three seconds': fed('14', 7, { draw: 20, critical: true }, { cases: { start: { duration: 'surge' } } }),
		// 4 A × (36 m × 2.135 mΩ/m + 2.4 mΩ) = 0.317 V, 2.6 % of 12 V
		'a radio link of 4 A, 18 m away, on 8 AWG': fed('8', 18, { draw: 4, critical: true })
	},
	invalid: {
		'a bilge pump of 8.5 A, 7 m away, on 14 AWG: 8.7 %': {
			diagram: fed('14', 7, { draw: 8.5, critical: true }),
			says: 'L loses 1.04 V, 8.7 % of 12 V, on the way there and back to its own 8.5 A in “on”; a critical circuit may lose 3 % (0.36 V). The largest part is lost in W1 (0.51 V) and W2 (0.51 V).',
			remedy: 'Use 8 AWG for W1 and W2, or shorten them.',
			at: ['part:l', 'conductor:W1', 'conductor:W2'],
			severity: 'error',
			source: 'ABYC E-11 (voluntary), 3 % circuits',
			caseId: 'on'
		},
		'in the case in which it loses most': {
			diagram: fed(
				'14',
				7,
				{ draw: 8.5, critical: true },
				{ cases: { little: { loads: 0.5 }, on: {}, less: { loads: 0.9 }, start: { duration: 'surge', loads: 2 } } }
			),
			says: 'L loses 1.04 V, 8.7 % of 12 V, on the way there and back to its own 8.5 A in “on”; a critical circuit may lose 3 % (0.36 V). The largest part is lost in W1 (0.51 V) and W2 (0.51 V).',
			at: ['part:l', 'conductor:W1', 'conductor:W2'],
			severity: 'error',
			caseId: 'on'
		},
		'the same as an ordinary circuit by practice: more than 5 %': {
			diagram: fed('14', 7, { draw: 8.5 }),
			says: 'L loses 1.04 V, 8.7 % of 12 V, on the way there and back to its own 8.5 A in “on”; 5 % (0.6 V) is the limit. The largest part is lost in W1 (0.51 V) and W2 (0.51 V).',
			remedy: 'Use 10 AWG for W1 and W2, or shorten them.',
			at: ['part:l', 'conductor:W1', 'conductor:W2'],
			severity: 'warning',
			source: 'common practice, no source'
		},
		// 4 A × (36 m × 8.587 mΩ/m + 2.4 mΩ) = 1.246 V
		'a radio link of 4 A, 18 m away, on 14 AWG: 10.4 %, by the law too': {
			diagram: fed('14', 18, { draw: 4 }, { profile: 'us-small-craft' }),
			says: 'L loses 1.25 V, 10.4 % of 12 V, on the way there and back to its own 4 A in “on”; 10 % (1.2 V) is the limit. The largest part is lost in W1 (0.62 V) and W2 (0.62 V).',
			at: ['part:l', 'conductor:W1', 'conductor:W2'],
			severity: 'error',
			source: '46 CFR 169.672'
		},
		// 3 % of 24 V is 0.72 V: 12 A × (18 m × 5.401 mΩ/m + 2.4 mΩ) = 1.195 V
		'lights on 24 V: 12 A over 9 m of 12 AWG lose 5 % of 24 V': {
			diagram: fed('12', 9, { draw: 12, critical: true }, { nominalV: 24 }),
			says: 'L loses 1.2 V, 5 % of 24 V, on the way there and back to its own 12 A in “on”; a critical circuit may lose 3 % (0.72 V). The largest part is lost in W1 (0.59 V) and W2 (0.59 V).',
			remedy: 'Use 8 AWG for W1 and W2, or shorten them.',
			at: ['part:l', 'conductor:W1', 'conductor:W2'],
			severity: 'error'
		},
		// Feeder 28 A × (4 m × 1.343 mΩ/m + 0.16 mΩ + 1.33 mΩ) = 0.192 V, 1.6 %; branch 2 A × (16.1 m × 8.587 mΩ/m + 1.2 mΩ
		// + 16 mΩ) = 0.311 V, 2.6 %: together 0.503 V.
		'a feeder and a branch that pass alone and fail together': {
			diagram: circuit(
				{
					b: ['battery', { capacityAh: 200 }],
					f: ['fuse-block', { fuseA: 60 }],
					p: ['positive-bus'],
					g: ['inline-fuse', { fuseA: 5 }],
					k: ['load', { draw: 26 }],
					n: ['load', { draw: 2, critical: true }],
					m: ['negative-bus']
				},
				[
					['f.post', 'p.1', { gauge: '6', lengthM: 2 }],
					['p.2', 'k.pos', { gauge: '6', lengthM: 0.5 }],
					['p.3', 'g.in', { gauge: '14', lengthM: 0.1 }],
					['g.out', 'n.pos', { gauge: '14', lengthM: 8 }],
					['n.neg', 'm.1', { gauge: '14', lengthM: 8 }],
					['k.neg', 'm.2', { gauge: '6', lengthM: 0.5 }],
					['m.3', 'b.neg', { gauge: '6', lengthM: 2 }]
				],
				{ mounts: { f: 'b.pos' } }
			),
			says: 'N passes on its own (0.32 V, 2.7 % of 12 V), but with all else in “on” it loses 0.5 V, 4.2 % of 12 V; 3 % (0.36 V) is the limit. The largest part is lost in W4 (0.14 V) and W5 (0.14 V).',
			remedy: 'Thicken what N shares with the other loads, or feed it from nearer the battery.',
			at: ['part:n', 'conductor:W4', 'conductor:W5'],
			severity: 'warning'
		},
		// 50 A on 10 AWG of 105 °C and 60 A (33 CFR 183.425 Table 5): 30 + 75 × (50/60)² = 82 °C. At 0.01787 Ω·mm²/m
		// 50 A × (1.24 m × 3.397 mΩ/m + 2.4 mΩ) = 0.331 V; at 82 °C, 0.017241 × (1 + 0.00393 × 62), 0.373 V.
		'a critical circuit that passes by the tables and not when its conductors are as hot as their current makes them': {
			diagram: fed('10', 0.62, { draw: 50, critical: true }),
			says: 'L passes with its conductors as warm as the sizing tables take them (0.33 V, 2.8 % of 12 V), but when they have carried their currents for hours it loses 0.37 V, 3.1 % of 12 V; 3 % (0.36 V) is the limit. The largest part is lost in W1 (0.15 V) and W2 (0.15 V).',
			remedy: 'Use 8 AWG for W1 and W2, or shorten them.',
			at: ['part:l', 'conductor:W1', 'conductor:W2'],
			severity: 'note'
		},
		'a fuse that loses most': {
			diagram: circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 1 }], l: ['load', { draw: 5, critical: true }] }, [
				['b.pos', 'f.in', { gauge: '6', lengthM: 0.1 }],
				['f.out', 'l.pos', { gauge: '6', lengthM: 0.1 }],
				['l.neg', 'b.neg', { gauge: '6', lengthM: 0.1 }]
			]),
			says: 'L loses 0.4 V, 3.4 % of 12 V, on the way there and back to its own 5 A in “on”; a critical circuit may lose 3 % (0.36 V). The largest part is lost in F (0.4 V).',
			remedy: 'Use thicker or shorter conductors, or fewer parts on the way.',
			at: ['part:l', 'part:f'],
			severity: 'error'
		}
	}
});
