import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { busBehindLargerFuse } from '../../../src/core/rules/bus-behind-larger-fuse.ts';

/** A panel of 60 A with three ways of 30 A in use. */
const panel = (fuseA: number, ratedA = 60) =>
	circuit(
		{
			b: ['battery'],
			f: ['inline-fuse', { family: 'strip-sf51', fuseA }],
			p: ['blade-panel', { ways: 4, fuseA: [30, 30, 30, 30], ratedA }],
			l: ['load'],
			m: ['load'],
			n: ['load']
		},
		[
			['b.pos', 'f.in', { gauge: '4', lengthM: 0.1 }],
			['f.out', 'p.feed', { gauge: '4' }],
			['p.1', 'l.pos'],
			['p.2', 'm.pos'],
			['p.3', 'n.pos'],
			['p.neg', 'b.neg', { gauge: '4' }],
			['l.neg', 'p.n1'],
			['m.neg', 'p.n2'],
			['n.neg', 'p.n3']
		]
	);

/** A positive bus of 100 A with a block of two fuses on it and a load without a fuse of its own. */
const bus = (fuseAA: number, draw = 20) =>
	circuit(
		{
			b: ['battery', { resistanceMilliohm: 0.1 }],
			f: ['inline-fuse', { family: 'strip-sf51', fuseA: 125 }],
			p: ['positive-bus', { ratedA: 100 }],
			t: ['twin-fuse-block', { fuseAA, fuseBA: 40 }],
			l: ['load', { draw }]
		},
		[
			['b.pos', 'f.in', { gauge: '4', lengthM: 0.1 }],
			['f.out', 'p.1', { gauge: '4' }],
			['p.2', 'l.pos', { gauge: '4' }],
			['l.neg', 'b.neg', { gauge: '4' }]
		],
		{ mounts: { t: 'p.3' } }
	);

testRule(busBehindLargerFuse, {
	valid: {
		'a panel of 60 A behind 60 A': panel(60),
		'a panel of 90 A behind 125 A, from which 90 A may be taken': panel(125, 90),
		'a bus of 100 A from which just 100 A may be taken': bus(40),
		'an unlimited feed, told by the rules on conductors': circuit({ b: ['battery'], p: ['blade-panel', { ratedA: 1 }], l: ['load'] }, [
			['b.pos', 'p.feed'],
			['p.1', 'l.pos']
		])
	},
	invalid: {
		'a panel of 60 A behind 61 A': {
			diagram: panel(61),
			says: 'P is rated 60 A; what feeds it lets 61 A through, and what it feeds may take 90 A.',
			at: ['part:p', 'conductor:W2'],
			severity: 'warning'
		},
		'a panel of 89 A behind 125 A': {
			diagram: panel(125, 89),
			says: 'P is rated 89 A; what feeds it lets 125 A through, and what it feeds may take 90 A.',
			at: ['part:p', 'conductor:W2'],
			severity: 'warning'
		},
		'a bus of 100 A from which 101 A may be taken': {
			diagram: bus(41),
			says: 'P is rated 100 A; what feeds it lets 125 A through, and what it feeds may take 101 A.',
			at: ['part:p', 'conductor:W2'],
			severity: 'warning'
		},
		'the same by what the load draws': {
			diagram: bus(40, 21),
			says: 'P is rated 100 A; what feeds it lets 125 A through, and what it feeds may take 101 A.',
			at: ['part:p', 'conductor:W2'],
			severity: 'warning'
		}
	}
});
