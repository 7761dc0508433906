import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arrayBesideController } from '../../../src/core/rules/array-beside-controller.ts';

const parts = (params: Record<string, boolean> = {}) => ({ b: ['battery'], s: ['solar-controller', params], p: ['link-post'] }) as const;

testRule(arrayBesideController, {
	valid: {
		'an array on its own terminals': circuit(parts(), [
			['s.pos', 'b.pos'],
			['s.neg', 'b.neg'],
			['p.stud', 's.pv-pos']
		]),
		'a controller that joins them itself': circuit(parts({ blocksReverse: false }), [
			['s.pos', 'b.pos'],
			['s.neg', 'b.neg'],
			['p.stud', 's.pv-pos']
		])
	},
	invalid: {
		'a link from the array to the battery': {
			diagram: circuit(parts(), [
				['s.pos', 'b.pos'],
				['s.neg', 'b.neg'],
				['p.stud', 's.pv-pos'],
				['p.stud', 'b.pos']
			]),
			says: 'The positive of the array of S is joined to the positive it charges, past the controller.',
			at: ['part:s'],
			severity: 'error'
		},
		'the battery on the array terminals': {
			diagram: circuit(parts(), [
				['s.pv-pos', 'b.pos'],
				['s.pv-neg', 'b.neg'],
				['p.stud', 's.pos']
			]),
			says: 'S is connected the wrong way round: a battery is on its array terminals.',
			at: ['part:s'],
			severity: 'error'
		}
	}
});
