import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arrayVoltageHot } from '../../../src/core/rules/array-voltage-hot.ts';

const array = (params: Record<string, number>) => circuit({ s: ['solar-controller', { setV: 14.4, ...params }] });

// 14.4 V and 5 V of room: 19.4 V. Hot, 45 °C above the label, 0.4 % a degree leaves 0.82: 23.6585 V on the label.
testRule(arrayVoltageHot, {
	valid: {
		'a module of which nothing is given': array({}),
		'just enough': array({ moduleVmpV: 23.66 }),
		'two in series of half as much': array({ moduleVmpV: 11.83, inSeries: 2 }),
		'a controller that works from less': array({ moduleVmpV: 20, minPvV: 16.4 }),
		'a module that loses less': array({ moduleVmpV: 22.5, vocPercentPerC: 0.3 })
	},
	invalid: {
		'just too little': {
			diagram: array({ moduleVmpV: 23.65 }),
			says: 'In the heat the array of S (1 in series) gives 19.39 V; S needs 19.4 V to charge.',
			at: ['part:s'],
			severity: 'warning'
		},
		'a controller that needs a little more': {
			diagram: array({ moduleVmpV: 20, minPvV: 16.41 }),
			says: 'In the heat the array of S (1 in series) gives 16.4 V; S needs 16.41 V to charge.',
			at: ['part:s'],
			severity: 'warning'
		}
	}
});
