/** Times from curves that are not verified; what is tested is which of two devices is named, not the times. */
import { selectivityLost } from '../../../src/core/rules/selectivity-lost.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

type Fuse = Record<string, string | number>;

/** A main fuse near the battery, a bus, and a circuit fuse with a short run behind it. */
const series = (main: Fuse, own: Fuse) =>
	circuit({ b: ['battery', { capacityAh: 200 }], f: ['inline-fuse', main], p: ['positive-bus'], g: ['inline-fuse', own], l: ['load'] }, [
		['b.pos', 'f.in', { gauge: '2/0', lengthM: 0.1 }],
		['f.out', 'p.1', { gauge: '2/0' }],
		['p.2', 'g.in', { gauge: '2', lengthM: 0.1 }],
		['g.out', 'l.pos', { gauge: '2', lengthM: 2 }],
		['l.neg', 'b.neg', { gauge: '2', lengthM: 2 }]
	]);

const strip = (fuseA: number): Fuse => ({ family: 'strip-sf51', fuseA });

testRule(selectivityLost, {
	valid: {
		'a 40 A blade under a 200 A strip fuse': series(strip(200), { fuseA: 40 }),
		'the same type at more than three times the rating': series(strip(300), strip(80)),
		'a single fuse': circuit({ b: ['battery'], f: ['inline-fuse', strip(100)], l: ['load'] }, [
			['b.pos', 'f.in'],
			['f.out', 'l.pos'],
			['l.neg', 'b.neg']
		]),
		'two fuses side by side, of which neither is the nearer': circuit(
			{ b: ['battery'], c: ['battery'], f: ['fuse-block'], g: ['fuse-block'], l: ['load'] },
			[
				['f.post', 'l.pos', { gauge: '2' }],
				['g.post', 'l.pos', { gauge: '2' }],
				['l.neg', 'b.neg', { gauge: '2' }],
				['c.neg', 'b.neg', { gauge: '2' }]
			],
			{ mounts: { f: 'b.pos', g: 'c.pos' } }
		),
		'two fuses side by side under a main, each with half of the current': circuit(
			{ b: ['battery'], m: ['inline-fuse', strip(200)], g: ['inline-fuse', strip(150)], h: ['inline-fuse', strip(150)], l: ['load'] },
			[
				['b.pos', 'm.in', { gauge: '2' }],
				['m.out', 'g.in', { gauge: '2' }],
				['m.out', 'h.in', { gauge: '2' }],
				['g.out', 'l.pos', { gauge: '2' }],
				['h.out', 'l.pos', { gauge: '2' }],
				['l.neg', 'b.neg', { gauge: '2' }]
			]
		),
		'a breaker, whose curve is not known': circuit(
			{ b: ['battery'], q: ['circuit-breaker'], g: ['inline-fuse', strip(100)], l: ['load'] },
			[
				['b.pos', 'q.in'],
				['q.out', 'g.in'],
				['g.out', 'l.pos'],
				['l.neg', 'b.neg']
			]
		)
	},
	invalid: {
		'equal strip fuses in series': {
			diagram: series(strip(150), strip(150)),
			says: 'F may open before G. A short at the end of the circuit draws 2.66 kA, 2.66 kA through it: it may be open after 11 ms, while the nearer one may take 114 ms. Everything behind it goes dark with the faulty circuit.',
			at: ['part:f', 'part:g'],
			severity: 'warning',
			unverified: true
		},
		'a fast main fuse over a slow one': {
			diagram: series({ fuseA: 30 }, strip(150)),
			says: 'F opens before G does. A short at the end of the circuit draws 1.88 kA, 1.88 kA through it. Everything behind it goes dark with the faulty circuit.',
			at: ['part:f', 'part:g'],
			severity: 'warning'
		},
		'a main fuse two levels up': {
			diagram: circuit(
				{ b: ['battery'], m: ['inline-fuse', strip(100)], g: ['inline-fuse', strip(500)], h: ['inline-fuse', strip(100)], l: ['load'] },
				[
					['b.pos', 'm.in', { gauge: '2' }],
					['m.out', 'g.in', { gauge: '2' }],
					['g.out', 'h.in', { gauge: '2' }],
					['h.out', 'l.pos', { gauge: '2' }],
					['l.neg', 'b.neg', { gauge: '2' }]
				]
			),
			says: 'M may open before H. A short at the end of the circuit draws 1.88 kA, 1.88 kA through it: it may be open after 10 ms, while the nearer one may take 102 ms. Everything behind it goes dark with the faulty circuit.',
			at: ['part:m', 'part:h'],
			severity: 'warning'
		},
		'the fuses of two strings over the fuse of the inverter, once': {
			diagram: circuit(
				{
					b: ['battery', { capacityAh: 200 }],
					c: ['battery', { capacityAh: 200 }],
					f: ['fuse-block', { fuseA: 225 }],
					g: ['fuse-block', { fuseA: 225 }],
					d: ['fused-bus', { fuseA: [250, 10, null, null] }],
					i: ['inverter'],
					l: ['load']
				},
				[
					['f.post', 'd.L', { gauge: '2/0' }],
					['g.post', 'd.L', { gauge: '2/0' }],
					['d.1', 'i.pos', { gauge: '2/0' }],
					['d.2', 'l.pos', { gauge: '10' }],
					['i.neg', 'b.neg', { gauge: '2/0' }],
					['l.neg', 'b.neg', { gauge: '10' }],
					['c.neg', 'b.neg', { gauge: '2/0' }]
				],
				{ mounts: { f: 'b.pos', g: 'c.pos' } }
			),
			says: 'F and G may open before D position 1. A short at the end of the circuit draws 6.66 kA, 3.59 kA through each: they may be open after 14 ms, while the nearer one may take 51 ms. Everything behind them goes dark with the faulty circuit.',
			at: ['part:f', 'part:g', 'part:d'],
			severity: 'warning'
		}
	}
});
