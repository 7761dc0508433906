import { adapterMisuse } from '../../../src/core/rules/adapter-misuse.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

/** An adapter on a stud, with a cable of this gauge on its first face. */
const onAdapter = (gauge: string, host = 'n.1') =>
	circuit({ b: ['battery'], n: ['negative-bus'], a: ['adapter-post'] }, [['b.neg', 'a.1', { gauge }]], { mounts: { a: host } });

testRule(adapterMisuse, {
	valid: {
		'a 6 AWG lead': onAdapter('6'),
		'an adapter with nothing on it': circuit({ n: ['negative-bus'], a: ['adapter-post'] }, [], { mounts: { a: 'n.1' } }),
		'a heavy cable on the stud itself': circuit({ b: ['battery'], n: ['negative-bus'] }, [['b.neg', 'n.1', { gauge: '4/0' }]])
	},
	invalid: {
		'a heavy cable': { diagram: onAdapter('2'), says: 'W1 (2 AWG) hangs on A.', at: ['conductor:W1', 'part:a'], severity: 'note' },
		'a heavier one on a battery post': {
			diagram: onAdapter('2/0', 'b.pos'),
			says: 'W1 (2/0 AWG) hangs on A, which stands on a battery post: its lever is on the battery’s seal.',
			at: ['conductor:W1', 'part:a'],
			severity: 'warning'
		},
		'an adapter on an adapter': {
			diagram: circuit({ n: ['negative-bus'], a: ['adapter-post'], c: ['adapter-post'] }, [], { mounts: { a: 'n.1', c: 'a.1' } }),
			says: 'C stands on A, which is an adapter itself.',
			at: ['part:c', 'part:a'],
			severity: 'warning'
		}
	}
});
