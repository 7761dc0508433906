import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { notFed } from '../../../src/core/rules/not-fed.ts';

testRule(notFed, {
	valid: {
		'a load fed through an open switch': circuit(
			{ b: ['battery'], s: ['battery-disconnect'], l: ['load'] },
			[
				['b.pos', 's.in'],
				['s.out', 'l.pos'],
				['l.neg', 'b.neg']
			],
			{ cases: { off: { levels: { s: 0 } } } }
		),
		'a load nobody has begun to connect': circuit({ b: ['battery'], l: ['load'], d: ['dcdc-charger'] }),
		'a drawing without any source yet': circuit({ f: ['inline-fuse'], l: ['load'] }, [['f.out', 'l.pos']])
	},
	invalid: {
		'a load with a return only': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [['l.neg', 'b.neg']]),
			says: 'Nothing leads from a source to the positive of L, even with every switch closed.',
			at: ['part:l'],
			severity: 'warning'
		},
		'loads behind an empty fuse position, once': {
			diagram: circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: null }], p: ['positive-bus'], l1: ['load'], l2: ['load'] }, [
				['b.pos', 'f.in'],
				['f.out', 'p.1'],
				['p.2', 'l1.pos'],
				['p.3', 'l2.pos'],
				['l1.neg', 'b.neg'],
				['l2.neg', 'b.neg']
			]),
			says: 'Nothing leads from a source to the positive of L1 and L2, even with every switch closed.',
			at: ['part:l1', 'part:l2'],
			severity: 'warning',
			remedy: 'Connect them to a fused position, or fit the fuse that is missing on the way.'
		},
		'a load joined to another load only': {
			diagram: circuit({ b: ['battery'], l1: ['load'], l2: ['load'] }, [
				['l1.pos', 'l2.pos'],
				['l1.neg', 'l2.neg']
			]),
			says: 'Nothing leads from a source to the positive of L1 and L2, even with every switch closed.',
			at: ['part:l1', 'part:l2'],
			severity: 'warning'
		},
		'both terminals on the negative pole': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [
				['b.neg', 'l.pos'],
				['b.neg', 'l.neg']
			]),
			says: 'L has both terminals on the negative pole.',
			at: ['part:l'],
			severity: 'warning'
		}
	}
});
