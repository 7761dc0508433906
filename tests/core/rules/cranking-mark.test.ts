import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { crankingMark } from '../../../src/core/rules/cranking-mark.ts';

const cranking = { use: 'cranking' } as const;
const engine = { b: ['battery'], q: ['battery-disconnect'], m: ['starter-motor'], l: ['load'] } as const;

testRule(crankingMark, {
	valid: {
		'the way to the starter and back, over a switch': circuit(engine, [
			['b.pos', 'q.in', cranking],
			['q.out', 'm.pos', cranking],
			['m.neg', 'b.neg', cranking],
			['q.out', 'l.pos'],
			['l.neg', 'b.neg']
		]),
		'nothing marked': circuit({ b: ['battery'], l: ['load'] }, [['b.pos', 'l.pos']])
	},
	invalid: {
		'a branch off the starter': {
			diagram: circuit(engine, [
				['b.pos', 'm.pos', cranking],
				['m.neg', 'b.neg', cranking],
				['m.pos', 'l.pos', cranking],
				['l.neg', 'b.neg']
			]),
			says: 'W3 is marked as cranking, but does not lie between a battery and a starter motor: its protection is not checked.',
			at: ['conductor:W3'],
			severity: 'error'
		},
		'a feeder in a diagram without a starter': {
			diagram: circuit({ b: ['battery'], p: ['positive-bus'] }, [['b.pos', 'p.1', cranking]]),
			says: 'W1 is marked as cranking, but does not lie between a battery and a starter motor: its protection is not checked.',
			at: ['conductor:W1'],
			severity: 'error'
		},
		'a way over a fuse, there and back': {
			diagram: circuit({ b: ['battery'], f: ['inline-fuse'], m: ['starter-motor'] }, [
				['b.pos', 'f.in', cranking],
				['f.out', 'm.pos', cranking]
			]),
			says: 'W1 and W2 are marked as cranking, but do not lie between a battery and a starter motor: their protection is not checked.',
			at: ['conductor:W1', 'conductor:W2'],
			severity: 'error'
		}
	}
});
