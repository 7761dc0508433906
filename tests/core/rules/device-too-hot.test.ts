import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { deviceTooHot } from '../../../src/core/rules/device-too-hot.ts';

const charger = (params: Record<string, string | number>) =>
	circuit({ c: ['dcdc-charger', params] }, [], { ambient: { outsideC: 35, engineSpaceC: 60 } });

testRule(deviceTooHot, {
	valid: {
		'a device of which nothing is known': charger({ space: 'engine' }),
		'60 °C in an engine space of 60 °C': charger({ space: 'engine', madeForC: 60 }),
		'35 °C outside at 35 °C': charger({ madeForC: 35 })
	},
	invalid: {
		'59.9 °C in an engine space of 60 °C': {
			diagram: charger({ space: 'engine', madeForC: 59.9 }),
			says: 'C is made for up to 59.9 °C; in the engine space it is 60 °C.',
			at: ['part:c'],
			severity: 'warning'
		},
		'34.9 °C outside at 35 °C': {
			diagram: charger({ madeForC: 34.9 }),
			says: 'C is made for up to 34.9 °C; where it stands it is 35 °C.',
			at: ['part:c'],
			severity: 'warning'
		}
	}
});
