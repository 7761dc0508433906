import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { deadEndedLiveConductor } from '../../../src/core/rules/dead-ended-live-conductor.ts';

const PARTS = { b: ['battery'], p: ['positive-bus'], f: ['inline-fuse'], l: ['load'], x: ['link-post'] } as const;
const FED = [
	['b.pos', 'p.1'],
	['p.2', 'f.in'],
	['f.out', 'l.pos'],
	['l.neg', 'b.neg']
] as const;

testRule(deadEndedLiveConductor, {
	valid: {
		'conductors that lead to a load, beside free studs': circuit(PARTS, FED),
		'a capped spare': circuit(PARTS, [...FED, ['p.3', 'x.stud', { use: 'spare' }]]),
		'a negative bus prepared for more': circuit({ ...PARTS, n: ['negative-bus'] }, [...FED, ['b.neg', 'n.1']]),
		'a ring of positive conductors': circuit(PARTS, [...FED, ['p.3', 'p.4']]),
		'a dead end without any source': circuit({ f: ['inline-fuse'], l: ['load'] }, [['f.out', 'l.pos']])
	},
	invalid: {
		'a conductor that ends on a lone post': {
			diagram: circuit(PARTS, [...FED, ['p.3', 'x.stud']]),
			says: 'W5 is live and leads to nothing that uses current, ending on X stud.',
			at: ['conductor:W5'],
			severity: 'warning',
			remedy: 'Remove it, connect what it is meant for, or cap the end and mark the conductor as a spare.'
		},
		'a fuse with nothing behind it': {
			diagram: circuit(PARTS, [FED[0], FED[1]]),
			says: 'W1 and W2 are live and lead to nothing that uses current, ending on F in.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'warning'
		},
		'the first conductor drawn, to an open-ended switch': {
			diagram: circuit({ b: ['battery'], q: ['battery-disconnect'] }, [['b.pos', 'q.in']]),
			says: 'W1 is live and leads to nothing that uses current, ending on Q in.',
			at: ['conductor:W1'],
			severity: 'warning'
		},
		'two dead ends on one bus, one each': {
			diagram: circuit({ ...PARTS, y: ['link-post'] }, [...FED, ['x.stud', 'p.3'], ['p.4', 'y.stud']]),
			finds: [
				{ says: 'W5 is live and leads to nothing that uses current, ending on X stud.', at: ['conductor:W5'], severity: 'warning' },
				{ says: 'W6 is live and leads to nothing that uses current, ending on Y stud.', at: ['conductor:W6'], severity: 'warning' }
			]
		},
		'a bus without circuits yet, as a note': {
			diagram: circuit({ ...PARTS, d: ['fused-bus'] }, [...FED, ['p.3', 'd.L']]),
			says: 'W5 feeds D, from which nothing is taken.',
			at: ['conductor:W5'],
			severity: 'note'
		}
	}
});
