/** Common practice, no source: the return stands what the fuses of its circuits let through. Amperages from 33 CFR 183.425 Table 5. */
import { undersizedReturn } from '../../../src/core/rules/undersized-return.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** Two circuits that share a return from a negative bus. */
const shared = (gauge: string, profile = 'common-practice') =>
	circuit(
		{
			b: ['battery'],
			m: ['fuse-block', { fuseA: 250 }],
			d: ['fused-bus', { fuseA: [100, 80, null, null] }],
			k: ['load'],
			l: ['load'],
			n: ['negative-bus']
		},
		[
			['m.post', 'd.L', { gauge: '2/0' }],
			['d.1', 'k.pos', { gauge: '4' }],
			['d.2', 'l.pos', { gauge: '4' }],
			['k.neg', 'n.1', { gauge: '4' }],
			['l.neg', 'n.2', { gauge: '4' }],
			['n.3', 'b.neg', { gauge }]
		],
		{ mounts: { m: 'b.pos' }, profile }
	);

const single = (positive: string, negative: string, fuseA: number) =>
	circuit(
		{ b: ['battery'], f: ['fuse-block', { fuseA }], l: ['load'] },
		[
			['f.post', 'l.pos', { gauge: positive }],
			['l.neg', 'b.neg', { gauge: negative }]
		],
		{ mounts: { f: 'b.pos' } }
	);

/** Two batteries with string fuses, two circuits, one main return. */
const bank = (stringA: number) =>
	circuit(
		{
			b1: ['battery', { capacityAh: 200 }],
			b2: ['battery', { capacityAh: 200 }],
			f1: ['fuse-block', { fuseA: stringA }],
			f2: ['fuse-block', { fuseA: stringA }],
			p: ['link-post'],
			n: ['link-post'],
			d: ['fused-bus', { fuseA: [300, 300, null, null] }],
			k: ['load'],
			l: ['load'],
			m: ['negative-bus']
		},
		[
			['f1.post', 'p.stud', { gauge: '4/0' }],
			['f2.post', 'p.stud', { gauge: '4/0' }],
			['p.stud', 'd.L', { gauge: '4/0' }],
			['d.1', 'k.pos', { gauge: '4/0' }],
			['d.2', 'l.pos', { gauge: '4/0' }],
			['k.neg', 'm.1', { gauge: '4/0' }],
			['l.neg', 'm.2', { gauge: '4/0' }],
			['m.3', 'n.stud', { gauge: '4/0' }],
			['n.stud', 'b1.neg', { gauge: '4/0' }],
			['n.stud', 'b2.neg', { gauge: '4/0' }]
		],
		{ mounts: { f1: 'b1.pos', f2: 'b2.pos' } }
	);

testRule(undersizedReturn, {
	valid: {
		'a shared return for the sum of its circuits: 180 A on 180 A': shared('3'),
		'120 A × 1.5 = 180 A by the law': shared('6', 'us-small-craft'),
		'as thick as the positive': single('12', '12', 45),
		'as thin as a positive that the fuse is too large for: one fault': single('12', '12', 70),
		'string fuses that add up to too much for the main conductors of both poles: the positive one says so': bank(300),
		'no fuse at all: the fault is in the positive': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg', { gauge: '16' }]
		])
	},
	invalid: {
		'thinner than the positive': {
			diagram: single('6', '12', 70),
			says: 'W2 (12 AWG, 45 A) is the return of circuits fed through F (70 A). A short in a load would send 70 A through it; at most 45 A is allowed (its amperage).',
			remedy: 'Use at least 8 AWG (80 A) for W2, or smaller fuses.',
			at: ['conductor:W2', 'part:f'],
			severity: 'error',
			source: 'common practice, no source; 33 CFR 183.425 Table 5, 105 °C column'
		},
		'a return in two pieces, both too thin: one finding, about the thinner': {
			diagram: circuit(
				{ b: ['battery'], f: ['fuse-block', { fuseA: 100 }], l: ['load'], p: ['link-post'] },
				[
					['f.post', 'l.pos', { gauge: '4' }],
					['l.neg', 'p.stud', { gauge: '10' }],
					['p.stud', 'b.neg', { gauge: '12' }]
				],
				{ mounts: { f: 'b.pos' } }
			),
			says: 'W3 (12 AWG, 45 A) is the return of circuits fed through F (100 A). A short in a load would send 100 A through it; at most 45 A is allowed (its amperage). The same goes for W2.',
			at: ['conductor:W3', 'part:f', 'conductor:W2'],
			severity: 'error'
		},
		'a shared return for less than the sum of its circuits': {
			diagram: shared('4'),
			says: 'W6 (4 AWG, 160 A) is the return of circuits fed through D position 1 and D position 2 (100 A + 80 A = 180 A). A short in a load would send 180 A through it; at most 175 A is allowed (the next standard rating above 160 A).',
			remedy: 'Use at least 3 AWG (180 A) for W6, or smaller fuses.',
			at: ['conductor:W6', 'part:d'],
			severity: 'error'
		}
	}
});
