import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { unequalVoltageParallel } from '../../../src/core/rules/unequal-voltage-parallel.ts';

/** 10 mΩ each; leads as in the test of reversed-battery, 1.424 mΩ. */
const block = (emfV: number) => ['battery', { emfV, resistanceMilliohm: 10 }] as const;
const lead = { gauge: '6', lengthM: 1 };

const pair = (emfV: number) =>
	circuit({ b1: block(12.6), b2: block(emfV) }, [
		['b1.pos', 'b2.pos', lead],
		['b1.neg', 'b2.neg', lead]
	]);

testRule(unequalVoltageParallel, {
	valid: {
		'equal strings': pair(12.6),
		'strings within half a volt': pair(13.1),
		'a reversed battery, which is another fault': circuit({ b1: block(12.6), b2: block(12.6) }, [
			['b1.pos', 'b2.neg', lead],
			['b1.neg', 'b2.pos', lead]
		])
	},
	invalid: {
		// 12.6 V around three batteries and three leads: 12.6 / 0.034271 = 368 A.
		'a string of two beside a single battery': {
			diagram: circuit({ b1: block(12.6), b2: block(12.6), b3: block(12.6) }, [
				['b1.pos', 'b2.neg', lead],
				['b2.pos', 'b3.pos', lead],
				['b1.neg', 'b3.neg', lead]
			]),
			says: 'B3, B2 and B1 form a loop whose voltages differ by 12.6 V: 368 A flows with everything switched off.',
			at: ['part:b3', 'part:b2', 'part:b1'],
			severity: 'fatal'
		},
		// 0.6 V around two batteries and two leads: 0.6 / 0.022847 = 26.3 A.
		'a tenth of the nominal voltage, still the lesser matter: 1.2 / 0.022847 = 52.5 A': {
			diagram: pair(13.8),
			says: 'B2 and B1 form a loop whose voltages differ by 1.2 V: 52.5 A flows with everything switched off.',
			at: ['part:b2', 'part:b1'],
			severity: 'warning'
		},
		'more than a tenth of it': {
			diagram: pair(13.81),
			says: 'B2 and B1 form a loop whose voltages differ by 1.21 V: 53 A flows with everything switched off.',
			at: ['part:b2', 'part:b1'],
			severity: 'fatal'
		},
		'two chemistries in parallel, a lesser matter': {
			diagram: pair(13.2),
			says: 'B2 and B1 form a loop whose voltages differ by 0.6 V: 26.3 A flows with everything switched off.',
			at: ['part:b2', 'part:b1'],
			severity: 'warning'
		}
	}
});
