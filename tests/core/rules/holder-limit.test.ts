import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { holderLimit } from '../../../src/core/rules/holder-limit.ts';

const holder = (params: Record<string, number | string>, gauge = '8') =>
	circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 30, ...params }] }, [['b.pos', 'f.in', { gauge }]]);
const panel = (wayRatedA: number) => circuit({ p: ['blade-panel', { ways: 2, fuseA: [20, 30], wayRatedA }] });

testRule(holderLimit, {
	valid: {
		'30 A in a holder for 30 A': holder({ holderA: 30 }),
		'8 AWG in a holder for 8 AWG': holder({ holderGauge: '8' }),
		'a holder of which nothing is known': holder({}, '2/0'),
		'30 A in ways of 30 A': panel(30),
		'100 A in positions of 100 A': circuit({ d: ['fused-bus', { positionRatedA: 100 }] })
	},
	invalid: {
		'30 A in a holder for 29.9 A': {
			diagram: holder({ holderA: 29.9 }),
			says: 'F holds a fuse of up to 30 A; the holder is made for 29.9 A.',
			at: ['part:f'],
			severity: 'warning'
		},
		'6 AWG in a holder for 8 AWG': {
			diagram: holder({ holderGauge: '8' }, '6'),
			says: 'W1 (6 AWG) ends in F, which takes conductors up to 8 AWG.',
			at: ['part:f', 'conductor:W1'],
			severity: 'warning'
		},
		'30 A in ways of 29.9 A': {
			diagram: panel(29.9),
			says: 'P way 2 holds a fuse of up to 30 A; the holder is made for 29.9 A.',
			at: ['part:p'],
			severity: 'warning'
		},
		'four of 100 A in positions of 99 A': {
			diagram: circuit({ d: ['fused-bus', { positionRatedA: 99 }] }),
			says: 'D position 1, D position 2, D position 3 and D position 4 hold fuses of up to 100 A; the holder is made for 99 A.',
			at: ['part:d'],
			severity: 'warning'
		}
	}
});
