/** Amperages from 33 CFR 183.425 Table 5 and note 1; 90 % as a warning is common practice, no source. */
import { undersizedConductor } from '../../../src/core/rules/undersized-conductor.ts';
import { circuit, type CircuitOptions } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const feeding = (amps: number, conductor: Record<string, unknown>, options: CircuitOptions = {}) =>
	circuit(
		{ b: ['battery', { capacityAh: 400 }], f: ['inline-fuse', { fuseA: 200, family: 'strip-sf51' }], l: ['load', { draw: amps }] },
		[
			['b.pos', 'f.in', { gauge: '4/0', lengthM: 0.1 }],
			['f.out', 'l.pos', { lengthM: 0.5, ...conductor }],
			['l.neg', 'b.neg', { gauge: '4/0' }]
		],
		options
	);

testRule(undersizedConductor, {
	valid: {
		'4 AWG 105 °C at 144 A, 90 % of 160 A': feeding(143.9, { gauge: '4' }),
		'a surge, which is not continuous': feeding(190, { gauge: '4' }, { cases: { start: { duration: 'surge' } } }),
		'a cranking supply, exempt by 33 CFR 183.425(g)': feeding(190, { gauge: '4', use: 'cranking' }),
		'four bundled under 50 V by the law': feeding(140, { gauge: '4', bundleCount: 4 }, { profile: 'us-small-craft' })
	},
	invalid: {
		'4 AWG 105 °C at 161 A': {
			diagram: feeding(161, { gauge: '4' }),
			says: 'W2 (4 AWG) carries 161 A continuously in “on”; its amperage is 160 A.',
			remedy: 'Use at least 3 AWG (180 A) for W2, or less load.',
			at: ['conductor:W2'],
			severity: 'error',
			source: '33 CFR 183.425 Table 5, 105 °C column',
			caseId: 'on',
			unverified: false
		},
		'the alternator lead of 4 AWG 75 °C in an engine space: 125 A × 0.75 = 93.75 A': {
			diagram: feeding(120, { gauge: '4', insulationC: 75, environment: 'engine-space' }, { profile: 'us-small-craft' }),
			says: 'W2 (4 AWG) carries 120 A continuously in “on”; its amperage is 125 A × 0.75 (engine space) = 93.8 A.',
			at: ['conductor:W2'],
			severity: 'error',
			source: '33 CFR 183.425 Table 5, 75 °C column; engine space: 33 CFR 183.425 Table 5, note 1'
		},
		'four bundled by practice: 160 A × 0.6 = 96 A': {
			diagram: feeding(100, { gauge: '4', bundleCount: 4 }),
			says: 'W2 (4 AWG) carries 100 A continuously in “on”; its amperage is 160 A × 0.6 (4 conductors bundled) = 96 A.',
			at: ['conductor:W2'],
			severity: 'error'
		},
		'more than nine tenths': {
			diagram: feeding(150, { gauge: '4' }),
			says: 'W2 (4 AWG) carries 150 A continuously in “on”, more than 90 % of its amperage, 160 A.',
			remedy: 'Use at least 3 AWG (180 A) for W2, or less load.',
			at: ['conductor:W2'],
			severity: 'warning',
			source: 'common practice, no source; 33 CFR 183.425 Table 5, 105 °C column'
		},
		'a size no table covers, shown as unverified': {
			diagram: feeding(25, { gauge: '0.75 mm²' }),
			says: 'W2 (0.75 mm²) carries 25 A continuously in “on”; its amperage is 16 A.',
			remedy: 'Use at least 1.5 mm² (25 A) for W2, or less load.',
			at: ['conductor:W2'],
			severity: 'error',
			unverified: true
		},
		'more than the thickest size carries': {
			diagram: feeding(480, { gauge: '4/0' }),
			finds: ['W1', 'W2', 'W3'].map((id) => ({
				says: `${id} (4/0 AWG) carries 480 A continuously in “on”; its amperage is 445 A.`,
				remedy: 'No thicker size of this kind carries it: share the load between two circuits, or use insulation for a higher temperature.',
				at: [`conductor:${id}`],
				severity: 'error' as const
			}))
		}
	}
});
