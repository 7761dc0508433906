import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { ignitionSource } from '../../../src/core/rules/ignition-source.ts';

const switched = (params: Record<string, string | boolean>) =>
	circuit({ b: ['battery'], q: ['battery-disconnect', params] }, [['b.pos', 'q.in']]);

testRule(ignitionSource, {
	valid: {
		'a switch in an ordinary place': switched({}),
		'a switch that is ignition protected': switched({ space: 'fuel', ignitionProtected: true }),
		'a switch in the engine space': switched({ space: 'engine' }),
		'a bus, in which nothing opens': circuit({ n: ['negative-bus', { space: 'fuel' }] })
	},
	invalid: {
		'a switch where petrol may gather': {
			diagram: switched({ space: 'fuel' }),
			says: 'Q stands where petrol or gas may gather and is not ignition protected.',
			at: ['part:q'],
			severity: 'error'
		},
		'a fuse block on a bus that stands there, and a pump': {
			diagram: circuit({ b: ['positive-bus', { space: 'fuel' }], f: ['fuse-block'], p: ['load', { space: 'fuel' }] }, [], {
				mounts: { f: 'b.1' }
			}),
			says: 'F and P stand where petrol or gas may gather and are not ignition protected.',
			at: ['part:f', 'part:p'],
			severity: 'error'
		}
	}
});
