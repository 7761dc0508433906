import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { fuseOpensOnStart } from '../../../src/core/rules/fuse-opens-on-start.ts';

const started = (startTimes: number | null, startS: number | null, fuse: Record<string, string | number> = { fuseA: 10 }, second = 0.001) =>
	circuit(
		{
			b: ['battery'],
			f: ['inline-fuse', fuse],
			p: ['link-post'],
			l: ['load', { draw: 5, startTimes, startS }],
			m: ['load', { draw: second }]
		},
		[
			['b.pos', 'f.in', { lengthM: 0.1 }],
			['f.out', 'l.pos'],
			['f.out', 'm.pos'],
			['l.neg', 'b.neg'],
			['m.neg', 'b.neg']
		]
	);

// A blade fuse holds 1.1 times its rating and opens after 0.25 s at the earliest at 1.6 times, 0.15 s at 2 times (ISO 8820-3, from memory).
testRule(fuseOpensOnStart, {
	valid: {
		'twice its draw, which the fuse holds': started(2, 10),
		'four times for less than the fuse takes to open': started(4, 0.14),
		'a load of which the start is not known': started(4, null),
		'a load that does not start': started(null, 10)
	},
	invalid: {
		'four times for longer than the fuse takes to open': {
			diagram: started(4, 0.16),
			says: 'F (10 A) may open after 150 ms at the 20 A that L draws for 0.16 s while it starts.',
			at: ['part:f', 'part:l'],
			severity: 'warning'
		},
		'three times with another load beside it': {
			diagram: started(3, 0.3, { fuseA: 10 }, 4.5),
			says: 'F (10 A) may open after 159 ms at the 19.5 A that L draws for 0.3 s while it starts.',
			at: ['part:f', 'part:l'],
			severity: 'warning'
		}
	}
});
