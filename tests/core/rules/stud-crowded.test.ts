import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { studCrowded } from '../../../src/core/rules/stud-crowded.ts';

/** `count` loads of `draw` amps on one stud of a bus. */
const crowd = (count: number, draw: number) => {
	const ids = Array.from({ length: count }, (_, index) => `l${index + 1}`);
	return circuit(
		{ b: ['battery'], p: ['positive-bus'], n: ['negative-bus'], ...Object.fromEntries(ids.map((id) => [id, ['load', { draw }] as const])) },
		[
			['b.pos', 'p.1', { gauge: '2/0' }],
			['b.neg', 'n.1', { gauge: '2/0' }],
			...ids.map((id) => ['p.2', `${id}.pos`] as const),
			...ids.map((id, index) => [`${id}.neg`, `n.${1 + (index % 2)}`] as const)
		]
	);
};

// FAA AC 43.13-1B, 11-174, and ABYC E-11: no more than four terminals on any one stud.
testRule(studCrowded, {
	valid: {
		'three terminals': crowd(3, 60),
		'four terminals of small circuits': crowd(4, 20),
		'four terminals of 100 A together': crowd(4, 25),
		'a post made for more': circuit({ x: ['link-post', { landings: 6 }], p: ['positive-bus'] }, [
			['x.stud', 'p.1'],
			['x.stud', 'p.1'],
			['x.stud', 'p.2'],
			['x.stud', 'p.2'],
			['x.stud', 'p.3']
		])
	},
	invalid: {
		'five on one stud': {
			diagram: crowd(5, 1),
			says: 'P stud 2 holds 5 terminals; no more than 4 may be stacked on it.',
			at: ['stud:p.2'],
			severity: 'error',
			source: 'FAA AC 43.13-1B, 11-174, and ABYC E-11: no more than four terminals on one stud'
		},
		'four with a large current among them': {
			diagram: circuit(
				{ b: ['battery'], p: ['positive-bus'], l1: ['load', { draw: 120 }], l2: ['load', { draw: 1 }], l3: ['load', { draw: 1 }] },
				[
					['b.pos', 'p.1', { gauge: '2/0' }],
					['p.1', 'l1.pos'],
					['p.1', 'l2.pos'],
					['p.1', 'l3.pos'],
					['l1.neg', 'b.neg'],
					['l2.neg', 'b.neg'],
					['l3.neg', 'b.neg']
				]
			),
			says: 'P stud 1 holds 4 terminals and carries 122 A.',
			at: ['stud:p.1'],
			severity: 'warning',
			caseId: 'on'
		},
		'three on a shunt, whose bolts take two': {
			diagram: circuit({ s: ['shunt'], n: ['negative-bus'] }, [
				['s.system', 'n.1'],
				['s.system', 'n.2'],
				['s.system', 'n.3']
			]),
			says: 'S system side holds 3 terminals; no more than 2 may be stacked on it.',
			at: ['stud:s.system'],
			severity: 'error',
			source: 'the limit given for this terminal'
		},
		'two in a clamp for one': {
			diagram: circuit({ l: ['load'], p: ['positive-bus'] }, [
				['l.pos', 'p.1'],
				['l.pos', 'p.2']
			]),
			says: 'L + holds 2 conductors; it is made for 1.',
			at: ['stud:l.pos'],
			severity: 'warning'
		}
	}
});
