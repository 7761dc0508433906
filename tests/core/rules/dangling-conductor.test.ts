import type { Conductor, Diagram } from '#core/diagram';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { danglingConductor } from '../../../src/core/rules/dangling-conductor.ts';

const good = circuit({ b: ['battery'], l: ['load'], f: ['fuse-block'], u: ['fuel-cell'] }, [['b.pos', 'l.pos']], {
	mounts: { f: 'b.pos' }
});

/** Damage that `circuit` refuses to draw. */
const ending = (to: Conductor['to']): Diagram => ({ ...good, conductors: { W1: { ...good.conductors['W1']!, to } } });
const mounted = (mounts: Diagram['mounts']): Diagram => ({ ...good, mounts });

testRule(danglingConductor, {
	valid: {
		'ends on terminals that exist': good,
		'an end on a part of unknown kind, said elsewhere': ending({ part: 'u', terminal: 'any' })
	},
	invalid: {
		'an end on a part that was deleted': {
			diagram: ending({ part: 'gone', terminal: 'pos' }),
			says: 'W1 ends on “gone”, but there is no such part.',
			at: ['conductor:W1'],
			severity: 'error'
		},
		'an end on a terminal the part no longer has': {
			diagram: ending({ part: 'l', terminal: 'third' }),
			says: 'W1 ends on L third, but this part has no such terminal.',
			at: ['conductor:W1'],
			severity: 'error',
			remedy: 'Move that end to a terminal that exists, or remove the conductor.'
		},
		'a block on a stud that is not there': {
			diagram: mounted({ f: { part: 'b', terminal: 'third' } }),
			says: 'F is mounted on B third, but this part has no such terminal.',
			at: ['part:f'],
			severity: 'error'
		},
		'a part that cannot be mounted': {
			diagram: mounted({ l: { part: 'b', terminal: 'pos' } }),
			says: 'L is mounted on B +, but it is not made to be mounted on a stud.',
			at: ['part:l'],
			severity: 'error'
		}
	}
});
