import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { washerInCurrentPath } from '../../../src/core/rules/washer-in-current-path.ts';

const stacked = (...items: string[]) =>
	circuit(
		{ p: ['positive-bus'], l1: ['load'], l2: ['load'], f: ['fuse-block'] },
		[
			['p.1', 'l1.pos', { gauge: '2' }],
			['p.1', 'l2.pos', { gauge: '12' }]
		],
		{ mounts: { f: 'p.1' }, stacks: { 'p.1': items } }
	);

// FAA AC 43.13-1B: no washer in the current path between two terminals.
testRule(washerInCurrentPath, {
	valid: {
		'washers under the nut': stacked('W1', 'block f', 'W2', 'washer', 'lock-washer', 'nut'),
		'a stack nobody has drawn': stacked()
	},
	invalid: {
		'a washer between two lugs': {
			diagram: stacked('W1', 'washer', 'block f', 'W2', 'nut'),
			says: 'On P stud 1 a washer lies under the fuse block F.',
			at: ['stud:p.1'],
			severity: 'error',
			remedy: 'Move the washer above the last terminal, directly under the nut.'
		},
		'a lock washer on the seat': {
			diagram: stacked('lock-washer', 'W1', 'washer', 'W2', 'block f', 'nut'),
			says: 'On P stud 1 a lock washer lies under the 2 AWG lug of W1.',
			at: ['stud:p.1'],
			severity: 'error'
		},
		'a second nut with a ring above it': {
			diagram: stacked('W1', 'block f', 'nut', 'W2', 'nut'),
			says: 'On P stud 1 a nut lies under the 12 AWG ring of W2, so its current passes through thread and nut.',
			at: ['stud:p.1'],
			severity: 'error'
		}
	}
});
