import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { chassisBond } from '../../../src/core/rules/chassis-bond.ts';

interface Bond {
	gauge: string | null;
	fuseA?: number;
	profile?: string;
	lead?: string;
	negative?: 'bonded' | 'insulated';
}

const bonded = ({ gauge, fuseA = 100, profile = 'common-practice', lead = '4', negative = 'bonded' }: Bond) =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA }], l: ['load'], n: ['negative-bus'], c: ['chassis-point'] },
		[
			['b.pos', 'f.in', { gauge: lead }],
			['f.out', 'l.pos'],
			['l.neg', 'n.1'],
			['n.2', 'b.neg'],
			...(gauge === null ? [] : ([['n.3', 'c.stud', { id: 'G', gauge }]] as const))
		],
		{ negative, profile }
	);

/** 48 V bank and an isolated 12 V output, each with its own bond or none. */
const isolated = ({
	bank,
	output,
	fuseA = 10,
	isolated = true
}: {
	bank: string | null;
	output: string | null;
	fuseA?: number;
	isolated?: boolean;
}) =>
	circuit(
		{
			b: ['battery', { nominalV: 48 }],
			f: ['inline-fuse', { family: 'class-t', fuseA: 100 }],
			k: ['dcdc-converter', { setV: 12, maxA: 15, isolated }],
			g: ['inline-fuse', { fuseA }],
			l: ['load'],
			c: ['chassis-point']
		},
		[
			['b.pos', 'f.in', { gauge: '4' }],
			['f.out', 'k.in-pos'],
			['k.in-neg', 'b.neg'],
			['k.out-pos', 'g.in'],
			['g.out', 'l.pos'],
			['l.neg', 'k.out-neg'],
			...(bank === null ? [] : ([['b.neg', 'c.stud', { id: 'G', gauge: bank }]] as const)),
			...(output === null ? [] : ([['k.out-neg', 'c.stud', { id: 'H', gauge: output }]] as const))
		],
		{ negative: 'bonded', nominalV: 48 }
	);

testRule(chassisBond, {
	valid: {
		'6 AWG, 120 A, behind 100 A': bonded({ gauge: '6' }),
		// 33 CFR 183.455(c)(1): 150 % of the 80 A of 8 AWG.
		'8 AWG behind 120 A by US law': bonded({ gauge: '8', fuseA: 120, profile: 'us-small-craft' }),
		// IEC 60364-4-41 414: an isolated low-voltage output may be earthed or not.
		'an isolated output without a bond of its own': isolated({ bank: '6', output: null }),
		'an isolated output with a bond as strong as its own fuse': isolated({ bank: '6', output: '14' }),
		'a bond of the output that is one of the bank as well, both negatives being one': isolated({
			bank: null,
			output: '6',
			isolated: false
		}),
		'an insulated system': bonded({ gauge: null, negative: 'insulated' }),
		// NFPA 70:2008 552.10(C)(4): at least 8 AWG, and not smaller than the unbonded lead.
		'8 AWG in an RV whose lead is 8 AWG': bonded({ gauge: '8', fuseA: 400, profile: 'rv-nec-552', lead: '8' }),
		'a battery on the chassis stud itself': circuit(
			{ b: ['battery'], c: ['chassis-point'], l: ['load'] },
			[
				['b.pos', 'l.pos'],
				['l.neg', 'c.stud'],
				['c.stud', 'b.neg']
			],
			{ negative: 'bonded' }
		)
	},
	invalid: {
		'no conductor to the chassis point': {
			diagram: bonded({ gauge: null }),
			says: 'The negative is given as bonded, but no conductor joins it to C.',
			at: ['part:c'],
			severity: 'warning'
		},
		'no chassis point': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [], { negative: 'bonded' }),
			says: 'The negative is given as bonded, but no chassis point is drawn.',
			at: ['diagram:'],
			severity: 'warning'
		},
		'an isolated output bonded, and the bank that feeds it not': {
			diagram: isolated({ bank: null, output: '6' }),
			says: 'The negative of B is given as bonded, but nothing joins it to the chassis: H bonds that of K, which is isolated from it. A positive conductor of B touching the chassis opens no fuse.',
			remedy: 'Run one conductor from the negative bus of B, on the load side of the shunt, to a chassis point.',
			at: ['conductor:H', 'part:b'],
			severity: 'warning'
		},
		'the bond of an isolated output, thinner than the fuse of that output asks for': {
			diagram: isolated({ bank: '6', output: '16', fuseA: 40 }),
			says: 'H (16 AWG, 25 A) bonds the chassis. A positive conductor touching it would send the 40 A of G through the bond; at most 25 A is allowed (its amperage).',
			at: ['conductor:H', 'part:g'],
			severity: 'warning'
		},
		'8 AWG, 80 A, behind 90 A': {
			diagram: bonded({ gauge: '8', fuseA: 90 }),
			says: 'G (8 AWG, 80 A) bonds the chassis. A positive conductor touching it would send the 90 A of F through the bond; at most 80 A is allowed (its amperage).',
			at: ['conductor:G', 'part:f'],
			severity: 'warning',
			remedy: 'Use at least 6 AWG (120 A) for G.',
			unverified: false
		},
		'8 AWG behind 125 A by US law': {
			diagram: bonded({ gauge: '8', fuseA: 125, profile: 'us-small-craft' }),
			says: 'G (8 AWG, 80 A) bonds the chassis. A positive conductor touching it would send the 125 A of F through the bond; at most 120 A is allowed (1.5 × 80 A).',
			at: ['conductor:G', 'part:f'],
			severity: 'warning'
		},
		'10 AWG in an RV': {
			diagram: bonded({ gauge: '10', fuseA: 5, profile: 'rv-nec-552', lead: '14' }),
			says: 'G (10 AWG) bonds the chassis; it must be at least 8 AWG, and no thinner than the battery’s positive lead.',
			at: ['conductor:G'],
			severity: 'warning',
			source: 'NFPA 70:2008 552.10(C)(4)'
		},
		'thinner than the lead of an RV’s battery': {
			diagram: bonded({ gauge: '6', profile: 'rv-nec-552', lead: '4' }),
			says: 'G (6 AWG) bonds the chassis; it must be at least 4 AWG, and no thinner than the battery’s positive lead.',
			at: ['conductor:G'],
			severity: 'warning'
		}
	}
});
