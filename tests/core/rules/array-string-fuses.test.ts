import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arrayStringFuses } from '../../../src/core/rules/array-string-fuses.ts';

const array = (params: Record<string, number>) => circuit({ s: ['solar-controller', { moduleIscA: 10, ...params }] });

// Into one string of three go 2 × 1.25 × 10 A = 25 A; a fuse carries 1.25 × 1.25 × 10 A = 15.625 A. Factors from memory.
testRule(arrayStringFuses, {
	valid: {
		'no limit given': array({ inParallel: 4 }),
		'two strings of modules that bear 12.5 A': array({ inParallel: 2, moduleFuseA: 12.5 }),
		'three strings of modules that bear 25 A': array({ inParallel: 3, moduleFuseA: 25 }),
		'fuses as large as the modules bear': array({ inParallel: 3, moduleFuseA: 20, stringFuseA: 20 }),
		'fuses just large enough': array({ inParallel: 3, moduleFuseA: 20, stringFuseA: 15.625 })
	},
	invalid: {
		'three strings of modules that bear 24.9 A': {
			diagram: array({ inParallel: 3, moduleFuseA: 24.9 }),
			says: 'The array of S has 3 strings and no fuse in each: into one of them the others can send 25 A, and its modules bear 24.9 A.',
			at: ['part:s'],
			severity: 'error'
		},
		'fuses a little larger than the modules bear': {
			diagram: array({ inParallel: 3, moduleFuseA: 20, stringFuseA: 20.1 }),
			says: 'The strings of S have fuses of 20.1 A; the modules bear 20 A.',
			at: ['part:s'],
			severity: 'error'
		},
		'fuses a little too small': {
			diagram: array({ inParallel: 3, moduleFuseA: 20, stringFuseA: 15.6 }),
			says: 'The strings of S have fuses of 15.6 A, which open in bright sun; at least 15.6 A is asked for.',
			at: ['part:s'],
			severity: 'warning'
		}
	}
});
