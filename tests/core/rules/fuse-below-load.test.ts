/** NEETS (US Navy training series): a fuse for 10 A of normal current is 12.5 A, hence 80 % of the rating. */
import { fuseBelowLoad } from '../../../src/core/rules/fuse-below-load.ts';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const fused = (fuseA: number, draw: number, options: CircuitOptions = {}) =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA }], l: ['load', { draw }] },
		[
			['b.pos', 'f.in', { lengthM: 0.1 }],
			['f.out', 'l.pos'],
			['l.neg', 'b.neg']
		],
		options
	);

/** Ways of one panel, each with a fuse of 10 A; null is a way not used. */
const panel = (draws: readonly (number | null)[]) => {
	const used = draws.flatMap((draw, index) => (draw === null ? [] : [{ id: index + 1, draw }]));
	return circuit(
		{
			b: ['battery'],
			p: ['blade-panel', { ways: draws.length, fuseA: draws.map(() => 10), thread: 'M8' }],
			...Object.fromEntries(used.map(({ id, draw }) => [`l${id}`, ['load', { draw }] as const]))
		},
		[
			['b.pos', 'p.feed', { gauge: '4' }],
			['p.neg', 'b.neg', { gauge: '4' }],
			...used.flatMap(({ id }) => [[`p.${id}`, `l${id}.pos`] as const, [`l${id}.neg`, `p.n${id}`] as const])
		]
	);
};

/** In the engine space, at this temperature. */
const hot = (family: string, draw: number, engineSpaceC: number, space = 'engine') =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { family, fuseA: 100, space }], l: ['load', { draw }] },
		[
			['b.pos', 'f.in', { lengthM: 0.1 }],
			['f.out', 'l.pos'],
			['l.neg', 'b.neg']
		],
		{ ambient: { outsideC: 30, engineSpaceC } }
	);

testRule(fuseBelowLoad, {
	valid: {
		'10 A through 12.5 A': fused(12.5, 10),
		'a start of 30 A through 15 A, which is a surge': fused(15, 30, { cases: { start: { duration: 'surge' } } }),
		// 0.7 among three or more that are each above 0.6; in air above 40 °C 0.9 of that, for blades 0.85: common practice, no source.
		'three in a row at 70 %': panel([7, 7, 7, null]),
		'two in a row at 80 %': panel([8, 8, null, 6]),
		'three in a row of which one is at 60 %': panel([8, 6, 8, null]),
		'three that are not in a row': panel([8, 8, null, 8]),
		'a strip fuse at 72 % in hot air': hot('strip-sf51', 72, 50),
		'a blade fuse at 68 % in hot air': hot('blade-large', 68, 50),
		'80 % in air of 40 °C': hot('strip-sf51', 80, 40),
		'80 % outside the hot space': hot('strip-sf51', 80, 50, 'ordinary'),
		'a load that is off': fused(10, 20, { cases: { off: { loads: 0 } } })
	},
	invalid: {
		'one of three in a row above 70 %': {
			diagram: panel([7, 6.1, 7.1, null]),
			says: 'P way 3 is a 10 A fuse and carries 7.1 A continuously in “on”, more than 70 % of its rating among loaded neighbours.',
			at: ['part:p'],
			severity: 'warning'
		},
		'a strip fuse a little above 72 % in hot air': {
			diagram: hot('strip-sf51', 72.1, 41),
			says: 'F is a 100 A fuse and carries 72.1 A continuously in “on”, more than 72 % of its rating at 41 °C.',
			at: ['part:f'],
			severity: 'warning'
		},
		'a blade fuse a little above 68 % in hot air': {
			diagram: hot('blade-large', 68.1, 50),
			says: 'F is a 100 A fuse and carries 68.1 A continuously in “on”, more than 68 % of its rating at 50 °C.',
			at: ['part:f'],
			severity: 'warning'
		},
		'10 A through 12 A': {
			diagram: fused(12, 10),
			says: 'F is a 12 A fuse and carries 10 A continuously in “on”, more than 80 % of its rating.',
			remedy: 'Fit at least 15 A if the conductors allow it; otherwise thicker conductors with it.',
			at: ['part:f'],
			severity: 'warning',
			source: 'common practice, no source',
			caseId: 'on'
		},
		'188 A through one string fuse of 150 A': {
			diagram: circuit(
				{ b: ['battery', { capacityAh: 300 }], f: ['fuse-block', { fuseA: 150 }], l: ['load', { draw: 188 }] },
				[
					['f.post', 'l.pos', { gauge: '4/0' }],
					['l.neg', 'b.neg', { gauge: '4/0' }]
				],
				{ mounts: { f: 'b.pos' } }
			),
			says: 'F is a 150 A fuse and carries 188 A continuously in “on”: it will open.',
			remedy: 'Fit at least 250 A if the conductors allow it; otherwise thicker conductors with it.',
			at: ['part:f'],
			severity: 'error'
		},
		'a breaker, in the case that is worst': {
			diagram: circuit(
				{ b: ['battery'], f: ['circuit-breaker', { ratingA: 20 }], k: ['load', { draw: 10 }], l: ['load', { draw: 8 }] },
				[
					['b.pos', 'f.in', { lengthM: 0.1 }],
					['f.out', 'k.pos'],
					['f.out', 'l.pos'],
					['k.neg', 'b.neg'],
					['l.neg', 'b.neg']
				],
				{ cases: { day: { levels: { k: 0 } }, night: {} } }
			),
			says: 'F is a 20 A breaker and carries 18 A continuously in “night”, more than 80 % of its rating.',
			at: ['part:f'],
			severity: 'warning',
			caseId: 'night'
		}
	}
});
