import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { arrayVoltageCold } from '../../../src/core/rules/array-voltage-cold.ts';

const array = (params: Record<string, number | null>) => circuit({ s: ['solar-controller', { maxPvV: 150, ...params }] });
const module = { moduleVocV: 37.2, vocPercentPerC: 0.28, coldestC: -35 };

// Worked by hand: n · Voc · (1 + 0.0028 · (25 − T)); 3 · 37.2 · 1.168 = 130.3 V, 4 · 37.2 · 1.168 = 173.8 V.
testRule(arrayVoltageCold, {
	valid: {
		'three modules of 37.2 V at −35 °C on 150 V': array({ ...module, inSeries: 3 }),
		'four modules of which the voltage is not given': array({ inSeries: 4, coldestC: -35 }),
		'four modules where the cold is not given': array({ inSeries: 4, moduleVocV: 37.2 }),
		'95 % of the limit at 25 °C': array({ inSeries: 1, moduleVocV: 142.5, vocPercentPerC: 0.3, coldestC: 25 }),
		'heat, which lowers nothing here': array({ inSeries: 1, moduleVocV: 142.5, vocPercentPerC: 0.3, coldestC: 40 })
	},
	invalid: {
		'four modules of 37.2 V at −35 °C on 150 V': {
			diagram: array({ ...module, inSeries: 4 }),
			says: 'The array of S (4 in series) reaches 173.8 V at −35 °C; S takes 150 V.',
			at: ['part:s'],
			severity: 'error'
		},
		'a little more than 95 % of the limit': {
			diagram: array({ inSeries: 1, moduleVocV: 142.6, vocPercentPerC: 0.3, coldestC: 25 }),
			says: 'The array of S (1 in series) reaches 142.6 V at 25 °C, close to the 150 V that S takes.',
			at: ['part:s'],
			severity: 'warning'
		},
		'the limit itself': {
			diagram: array({ inSeries: 1, moduleVocV: 150, vocPercentPerC: 0.3, coldestC: 25 }),
			says: 'The array of S (1 in series) reaches 150 V at 25 °C, close to the 150 V that S takes.',
			at: ['part:s'],
			severity: 'warning'
		},
		'a little more than the limit': {
			diagram: array({ inSeries: 1, moduleVocV: 150.1, vocPercentPerC: 0.3, coldestC: 25 }),
			says: 'The array of S (1 in series) reaches 150.1 V at 25 °C; S takes 150 V.',
			at: ['part:s'],
			severity: 'error'
		},
		'the table’s factor of 1.10 at 0 °C': {
			diagram: array({ inSeries: 1, moduleVocV: 137, coldestC: 0 }),
			says: 'The array of S (1 in series) reaches 150.7 V at 0 °C; S takes 150 V.',
			at: ['part:s'],
			severity: 'error'
		},
		'its 1.12 a little below': {
			diagram: array({ inSeries: 1, moduleVocV: 137, coldestC: -0.1 }),
			says: 'The array of S (1 in series) reaches 153.44 V at −0.1 °C; S takes 150 V.',
			at: ['part:s'],
			severity: 'error'
		},
		'beyond the table, by its last slope': {
			diagram: array({ inSeries: 1, moduleVocV: 120, coldestC: -50 }),
			says: 'The array of S (1 in series) reaches 154.8 V at −50 °C; S takes 150 V.',
			at: ['part:s'],
			severity: 'error'
		},
		'one module too many of itself': {
			diagram: array({ inSeries: 1, moduleVocV: 200, vocPercentPerC: 0.3, coldestC: 25 }),
			says: 'The array of S (1 in series) reaches 200 V at 25 °C; S takes 150 V.',
			at: ['part:s'],
			severity: 'error',
			remedy: 'Use a controller for a higher array voltage, or other modules.'
		}
	}
});
