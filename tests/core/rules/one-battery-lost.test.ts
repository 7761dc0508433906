import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { oneBatteryLost } from '../../../src/core/rules/one-battery-lost.ts';

interface Bank {
	draw: number;
	continuousA?: number | null;
	fuseA?: number;
	cases?: Record<string, { label?: string; levels?: Record<string, number> }>;
	watts?: number;
	milliohm?: number;
}

const two = ({ draw, continuousA = 100, fuseA = 125, cases = { on: { label: 'All on' } }, watts, milliohm = 5 }: Bank) =>
	circuit(
		{
			b1: ['battery', { continuousA, resistanceMilliohm: milliohm }],
			b2: ['battery', { continuousA, resistanceMilliohm: milliohm }],
			f1: ['inline-fuse', { fuseA }],
			f2: ['inline-fuse', { fuseA }],
			p: ['link-post'],
			n: ['link-post', { pole: 'negative' }],
			l: ['load', watts === undefined ? { draw } : { drawAs: 'power', draw: watts }]
		},
		[
			['b1.pos', 'f1.in', { gauge: '4/0' }],
			['f1.out', 'p.stud', { gauge: '4/0' }],
			['b1.neg', 'n.stud', { gauge: '4/0' }],
			['b2.pos', 'f2.in', { gauge: '4/0' }],
			['f2.out', 'p.stud', { gauge: '4/0' }],
			['b2.neg', 'n.stud', { gauge: '4/0' }],
			['p.stud', 'l.pos', { gauge: '4/0' }],
			['l.neg', 'n.stud', { gauge: '4/0' }]
		],
		{ cases }
	);
const at = ['part:b1', 'part:b2'];

testRule(oneBatteryLost, {
	valid: {
		'what one battery carries alone': two({ draw: 100 }),
		'limits not known': two({ draw: 120, continuousA: null }),
		'a single battery': circuit({ b: ['battery', { continuousA: 10 }], l: ['load', { draw: 5 }] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		]),
		'a case that says what may be on with one battery out': two({ draw: 150, cases: { on: {}, alone: { levels: { b1: 0, l: 0.5 } } } }),
		'a bank over its limits while it is whole, which is another fault': two({ draw: 250 })
	},
	invalid: {
		'more than one battery may deliver': {
			diagram: two({ draw: 101 }),
			says: 'If B1 drops out in “All on”, the rest is over its limits: B2 101 A of 100 A.',
			at,
			severity: 'warning',
			caseId: 'on'
		},
		'more than one fuse carries as well': {
			diagram: two({ draw: 126 }),
			says: 'If B1 drops out in “All on”, the rest is over its limits: B2 126 A of 100 A and F2 126 A of 125 A.',
			at,
			severity: 'warning'
		},
		// 13.2² V²/(4·40 mΩ) = 1089 W is the most that 40 mΩ passes; with both batteries twice as much.
		'a load that one battery cannot hold up': {
			diagram: two({ draw: 0, watts: 1150, milliohm: 40, continuousA: null, fuseA: 500 }),
			says: 'If B1 drops out in “All on”, the rest cannot hold the voltage up.',
			at,
			severity: 'warning'
		}
	}
});
