import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { halfConnectedCharger } from '../../../src/core/rules/half-connected-charger.ts';

const PARTS = { b: ['battery'], c: ['mains-charger'], p: ['positive-bus'], d: ['dcdc-converter'], l: ['load'] } as const;

testRule(halfConnectedCharger, {
	valid: {
		'both poles on the battery': circuit(PARTS, [
			['c.pos', 'b.pos'],
			['c.neg', 'b.neg']
		]),
		'a charger nobody has begun to connect': circuit(PARTS),
		'a converter that feeds a rail of its own': circuit(PARTS, [
			['b.pos', 'd.in-pos'],
			['b.neg', 'd.in-neg'],
			['d.out-pos', 'l.pos'],
			['d.out-neg', 'l.neg']
		]),
		'a drawing without a battery yet': circuit({ c: ['mains-charger'], p: ['positive-bus'] }, [['c.pos', 'p.1']])
	},
	invalid: {
		'a charger without its negative': {
			diagram: circuit(PARTS, [['c.pos', 'b.pos']]),
			says: 'The output of C reaches no battery on its negative side.',
			at: ['part:c'],
			severity: 'warning'
		},
		'a charger whose fuse is not fitted': {
			diagram: circuit({ ...PARTS, f: ['inline-fuse', { fuseA: null }] }, [
				['c.neg', 'b.neg'],
				['c.pos', 'f.in'],
				['f.out', 'b.pos']
			]),
			says: 'The output of C reaches no battery on its positive side.',
			at: ['part:c'],
			severity: 'warning',
			remedy: 'Connect the positive of C, through a fuse.'
		},
		'a charger on a bus that is not connected to anything': {
			diagram: circuit(PARTS, [['c.pos', 'p.1']]),
			says: 'C is connected, but its output reaches no battery.',
			at: ['part:c'],
			severity: 'warning'
		}
	}
});
