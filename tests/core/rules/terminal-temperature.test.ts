import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { terminalTemperature } from '../../../src/core/rules/terminal-temperature.ts';

const run = (draw: number, terminalC: number, insulationC: 75 | 105 = 105) =>
	circuit({ b: ['battery', { capacityAh: 400 }], f: ['inline-fuse', { fuseA: 200, terminalC }], l: ['load', { draw }] }, [
		['b.pos', 'f.in', { lengthM: 0.1, gauge: '2/0' }],
		['f.out', 'l.pos', { gauge: '6', insulationC }],
		['l.neg', 'b.neg', { gauge: '2/0' }]
	]);

// 6 AWG outside engine spaces: 120 A at 105 °C, 95 A at 75 °C and 80 A at 60 °C (33 CFR 183.425 Table 5).
testRule(terminalTemperature, {
	valid: {
		'as much as the 75 °C column gives': run(95, 75),
		'terminals as hot as the insulation': run(110, 105),
		'a conductor over its own amperage': run(121, 75),
		'insulation for less than the terminals': run(90, 90, 75)
	},
	invalid: {
		'a little more than the 75 °C column gives': {
			diagram: run(95.1, 75),
			says: 'W2 carries 95.1 A by its 105 °C insulation; the terminals of F are made for 75 °C, which allows 95 A.',
			at: ['conductor:W2', 'part:f'],
			severity: 'warning'
		},
		'terminals for 70 °C, read in the 60 °C column': {
			diagram: run(80.1, 70),
			says: 'W2 carries 80.1 A by its 105 °C insulation; the terminals of F are made for 70 °C, which allows 80 A.',
			at: ['conductor:W2', 'part:f'],
			severity: 'warning'
		}
	}
});
