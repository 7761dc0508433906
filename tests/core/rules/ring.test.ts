import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { ring } from '../../../src/core/rules/ring.ts';

testRule(ring, {
	valid: {
		'circuits that part and do not meet again': circuit({ b: ['battery'], p: ['positive-bus'], l: ['load'], m: ['load'] }, [
			['b.pos', 'p.1'],
			['p.2', 'l.pos'],
			['p.3', 'm.pos']
		]),
		'two conductors side by side': circuit({ p: ['battery'], q: ['link-post'] }, [
			['p.pos', 'q.stud'],
			['p.pos', 'q.stud']
		]),
		'two batteries in parallel, each with a fuse': circuit(
			{ a: ['battery'], b: ['battery'], f: ['inline-fuse'], g: ['inline-fuse'], p: ['link-post'] },
			[
				['a.pos', 'f.in'],
				['b.pos', 'g.in'],
				['f.out', 'p.stud'],
				['g.out', 'p.stud'],
				['a.pos', 'b.pos']
			]
		),
		'a ring of negatives': circuit({ b: ['battery'], n: ['negative-bus'], m: ['negative-bus'] }, [
			['b.neg', 'n.1'],
			['n.2', 'm.1'],
			['n.3', 'm.2']
		])
	},
	invalid: {
		'a bus fed through two fuses': {
			diagram: circuit({ b: ['battery'], f: ['inline-fuse'], g: ['inline-fuse'], p: ['link-post'], l: ['load'] }, [
				['b.pos', 'f.in'],
				['b.pos', 'g.in'],
				['f.out', 'p.stud'],
				['g.out', 'p.stud'],
				['p.stud', 'l.pos']
			]),
			says: 'W1, W2, W3 and W4 form a ring: what hangs on it is fed by two ways.',
			at: ['conductor:W1', 'conductor:W2', 'conductor:W3', 'conductor:W4'],
			severity: 'warning'
		},
		'a bus jumpered to itself': {
			diagram: circuit({ b: ['battery'], p: ['positive-bus'] }, [
				['b.pos', 'p.1'],
				['p.2', 'p.4']
			]),
			says: 'W2 closes a ring: what hangs on it is fed by two ways.',
			at: ['conductor:W2'],
			severity: 'warning'
		},
		'two rings apart': {
			diagram: circuit({ b: ['battery'], p: ['positive-bus'], q: ['positive-bus'] }, [
				['b.pos', 'p.1'],
				['p.2', 'p.4'],
				['p.3', 'q.1'],
				['q.2', 'q.3']
			]),
			finds: [
				{ says: 'W2 closes a ring: what hangs on it is fed by two ways.', at: ['conductor:W2'], severity: 'warning' },
				{ says: 'W4 closes a ring: what hangs on it is fed by two ways.', at: ['conductor:W4'], severity: 'warning' }
			]
		}
	}
});
