import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { combinerCurrent } from '../../../src/core/rules/combiner-current.ts';

const joined = (ratedA: number, kind: 'combiner-relay' | 'battery-disconnect' = 'combiner-relay') => {
	const battery = { emfV: 13, lowEmfV: 12, resistanceMilliohm: 5 };
	const [a, b] = kind === 'combiner-relay' ? (['a', 'b'] as const) : (['in', 'out'] as const);
	return circuit({ s: ['battery', battery], r: [kind, { ratedA }], h: ['battery', battery] }, [
		['s.pos', `r.${a}`, { gauge: '4/0', lengthM: 0.01 }],
		[`r.${b}`, 'h.pos', { gauge: '4/0', lengthM: 0.01 }],
		['s.neg', 'h.neg', { gauge: '4/0', lengthM: 0.01 }]
	]);
};

// Worked by hand: 1 V / (2 × 5 mΩ + relay 0.3 mΩ + three conductors of 0.08 mΩ and a little) = 95 A.
testRule(combinerCurrent, {
	valid: {
		'a relay of 96 A': joined(96),
		'a switch worked by hand': joined(10, 'battery-disconnect'),
		'a relay with one bank': circuit({ s: ['battery'], r: ['combiner-relay', { ratedA: 1 }] }, [['s.pos', 'r.a']])
	},
	invalid: {
		'a relay of 94 A': {
			diagram: joined(94),
			says: 'When R joins a bank that is full to one that is nearly empty, about 94.8 A flows through it; it is rated 94 A.',
			at: ['part:r'],
			severity: 'warning'
		}
	}
});
