import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { liveStudsBare } from '../../../src/core/rules/live-studs-bare.ts';

const battery = (liveStuds: string) => circuit({ b: ['battery', { liveStuds }] });

testRule(liveStudsBare, {
	valid: {
		'studs of which nothing is said': battery('not-known'),
		'covered studs': battery('covered'),
		'a bare bus that nothing feeds': circuit({ n: ['positive-bus', { liveStuds: 'bare' }] }),
		'a bare negative bus': circuit({ b: ['battery'], n: ['negative-bus', { liveStuds: 'bare' }] }, [['b.neg', 'n.1']])
	},
	invalid: {
		'bare posts': {
			diagram: battery('bare'),
			says: 'B has bare studs on the positive pole within reach.',
			at: ['part:b'],
			severity: 'error'
		},
		'a bare bus and a bare battery': {
			diagram: circuit({ b: ['battery', { liveStuds: 'bare' }], n: ['positive-bus', { liveStuds: 'bare' }] }, [['b.pos', 'n.1']]),
			says: 'B and N have bare studs on the positive pole within reach.',
			at: ['part:b', 'part:n'],
			severity: 'error'
		}
	}
});
