import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { shortCircuitCurrentUnknown } from '../../../src/core/rules/short-circuit-current-unknown.ts';

/** A battery, and a fuse of a given breaking capacity a centimetre from its post. */
const bank = (battery: Record<string, number | string>, breakingA: number, second: Record<string, number | string> | null = null) =>
	circuit(
		{
			b: ['battery', battery],
			q: ['circuit-breaker', { breakingA, ratedV: 80 }],
			l: ['load'],
			...(second === null ? {} : { c: ['battery', second] as const })
		},
		[
			['b.pos', 'q.in', { gauge: '4/0', lengthM: 0.001 }],
			['q.out', 'l.pos'],
			['l.neg', 'b.neg', { gauge: '4/0', lengthM: 0.001 }],
			...(second === null
				? []
				: ([
						['c.pos', 'b.pos', { gauge: '4/0', lengthM: 0.001 }],
						['c.neg', 'b.neg', { gauge: '4/0', lengthM: 0.001 }]
					] as const))
		]
	);

/** Three times what 100 Ah of lithium are taken to have, 2.5 mΩ. */
const known = { capacityAh: 100, faultEmfV: 13.2, faultResistanceMilliohm: 7.5 };

testRule(shortCircuitCurrentUnknown, {
	valid: {
		'a battery whose resistance into a short is given': bank(known, 60_000),
		'a system without a fuse whose breaking capacity could be compared': circuit({ b: ['battery'], l: ['load'] }, [
			['b.pos', 'l.pos'],
			['l.neg', 'b.neg']
		])
	},
	invalid: {
		// 13.2 V ÷ 1 Ω.
		'a resistance given that no battery of the kind has, so that every fuse seems strong enough': {
			diagram: bank({ ...known, faultResistanceMilliohm: 1000 }, 60_000),
			says: 'The resistance of B into a short is given as 1 Ω, a dead short at its posts as 13.2 A; batteries of its kind have about 2.5 mΩ.',
			at: ['part:b'],
			severity: 'warning'
		},
		'one a little over three times the usual': {
			diagram: bank({ ...known, faultResistanceMilliohm: 7.6 }, 60_000),
			says: 'The resistance of B into a short is given as 7.6 mΩ, a dead short at its posts as 1.74 kA; batteries of its kind have about 2.5 mΩ.',
			at: ['part:b'],
			severity: 'warning'
		},
		'an estimate, and a breaker that stands ten times as much': {
			// 0.25 Ω·Ah by 100 Ah and 13.6 V: 5.44 kA.
			diagram: bank({ capacityAh: 100 }, 60_000),
			says: 'The short-circuit current of B is not given: breaking capacities were checked against an estimate, 5.44 kA at most, from chemistry and capacity.',
			at: ['part:b'],
			severity: 'note'
		},
		'a breaker that breaks what is estimated, but not twice that': {
			diagram: bank({ capacityAh: 100 }, 10_000),
			// 13.6 V ÷ (2.5 mΩ + two joints of 0.04 mΩ) = 5.27 kA.
			says: 'The short-circuit current of B is not given: breaking capacities were checked against an estimate, 5.44 kA at most, from chemistry and capacity. Q (breaker) breaks 10 kA and would see 5.27 kA: twice that would be too much for it.',
			at: ['part:b', 'part:q'],
			severity: 'warning'
		},
		'a breaker a little under twice the estimate': {
			diagram: bank({ capacityAh: 100 }, 10_530),
			says: 'The short-circuit current of B is not given: breaking capacities were checked against an estimate, 5.44 kA at most, from chemistry and capacity. Q (breaker) breaks 10.5 kA and would see 5.27 kA: twice that would be too much for it.',
			at: ['part:b', 'part:q'],
			severity: 'warning'
		},
		'a breaker a little over twice the estimate': {
			diagram: bank({ capacityAh: 100 }, 10_550),
			says: 'The short-circuit current of B is not given: breaking capacities were checked against an estimate, 5.44 kA at most, from chemistry and capacity.',
			at: ['part:b'],
			severity: 'note'
		},
		'a breaker too weak as it is, which is a fault of its own': {
			diagram: bank({ capacityAh: 100 }, 3000),
			says: 'The short-circuit current of B is not given: breaking capacities were checked against an estimate, 5.44 kA at most, from chemistry and capacity.',
			at: ['part:b'],
			severity: 'note'
		},
		'two of which one is known': {
			diagram: bank({ capacityAh: 100 }, 60_000, known),
			says: 'The short-circuit current of B is not given: breaking capacities were checked against an estimate, 5.44 kA at most, from chemistry and capacity.',
			at: ['part:b'],
			severity: 'note'
		},
		'two of different capacity: the stronger is told': {
			diagram: bank({ capacityAh: 100 }, 60_000, { capacityAh: 50 }),
			says: 'The short-circuit current of B and C is not given: breaking capacities were checked against an estimate, 5.44 kA each at most, from chemistry and capacity.',
			at: ['part:b', 'part:c'],
			severity: 'note'
		}
	}
});
