import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { batteryPlace } from '../../../src/core/rules/battery-place.ts';

const battery = (params: Record<string, string | boolean>) => circuit({ b: ['battery', params] });

testRule(batteryPlace, {
	valid: {
		'a battery in an ordinary place': battery({}),
		'an enclosed battery where people sleep': battery({ space: 'sleeping', enclosed: true }),
		'a load where people sleep': circuit({ l: ['load', { space: 'sleeping' }] })
	},
	invalid: {
		'a battery where people sleep': {
			diagram: battery({ space: 'sleeping' }),
			says: 'B stands where people sleep, without an enclosure vented to the outside.',
			at: ['part:b'],
			severity: 'note'
		},
		'batteries where petrol may gather': {
			diagram: circuit({ a: ['battery', { space: 'fuel' }], b: ['battery', { space: 'fuel', enclosed: true }] }),
			says: 'A and B stand where petrol or gas may gather.',
			at: ['part:a', 'part:b'],
			severity: 'warning'
		}
	}
});
