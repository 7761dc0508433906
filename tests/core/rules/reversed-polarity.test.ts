import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { reversedPolarity } from '../../../src/core/rules/reversed-polarity.ts';

testRule(reversedPolarity, {
	valid: {
		'a charger the right way round': circuit({ b: ['battery'], c: ['mains-charger'] }, [
			['c.pos', 'b.pos'],
			['c.neg', 'b.neg']
		]),
		'a charger with both conductors on one pole': circuit({ b: ['battery'], c: ['mains-charger'] }, [
			['c.pos', 'b.pos'],
			['c.neg', 'b.pos']
		]),
		'a charger on nothing': circuit({ b: ['battery'], c: ['mains-charger'] }),
		'a load the right way round': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['b.neg', 'l.neg']
		]),
		'a lamp that works either way round': circuit({ b: ['battery'], l: ['load', { reversible: true }] }, [
			['b.pos', 'l.neg'],
			['b.neg', 'l.pos']
		]),
		'a load across the upper battery of a string': circuit({ b1: ['battery'], b2: ['battery'], l: ['load'] }, [
			['b1.pos', 'b2.neg'],
			['b2.pos', 'l.pos'],
			['l.neg', 'b2.neg']
		])
	},
	invalid: {
		'a load with its conductors exchanged': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [
				['b.pos', 'l.neg'],
				['b.neg', 'l.pos']
			]),
			says: 'L is connected the wrong way round: its + is on the negative pole or its − on the positive.',
			at: ['part:l'],
			severity: 'error'
		},
		'a load whose only conductor is on the wrong terminal': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [['b.pos', 'l.neg']]),
			says: 'L is connected the wrong way round: its + is on the negative pole or its − on the positive.',
			at: ['part:l'],
			severity: 'error'
		},
		'a load reversed across the lower battery of a string': {
			diagram: circuit({ b1: ['battery'], b2: ['battery'], l: ['load', {}, { label: '' }] }, [
				['b1.pos', 'b2.neg'],
				['b1.neg', 'l.pos'],
				['l.neg', 'b1.pos']
			]),
			says: 'Unlabelled load is connected the wrong way round: its + is on the negative pole or its − on the positive.',
			at: ['part:l'],
			severity: 'error'
		},
		'a charger with its conductors exchanged': {
			diagram: circuit({ b: ['battery'], c: ['mains-charger'] }, [
				['c.pos', 'b.neg'],
				['c.neg', 'b.pos']
			]),
			says: 'C is connected the wrong way round to the batteries: its output + is on their negative.',
			at: ['part:c'],
			severity: 'error',
			remedy: 'Exchange the two output conductors of C.'
		}
	}
});
