/** 33 CFR 183.455(a), (b) and 183.460(a): at the source, within 7 in, 40 in in a sheath, 72 in of a battery; cranking exempt. */
import { unprotectedConductor } from '../../../src/core/rules/unprotected-conductor.ts';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';

const LAW = { profile: 'us-small-craft' };
const RUNNING = { run: { levels: { st: 0 } } };

/** Battery to lead to fuse to load. */
const fused = (leadM: number, options = {}) =>
	circuit(
		{ b: ['battery'], f: ['inline-fuse', { fuseA: 40 }], l: ['load'] },
		[
			['b.pos', 'f.in', { lengthM: leadM }],
			['f.out', 'l.pos'],
			['l.neg', 'b.neg']
		],
		options
	);

/** Nothing between battery and load. */
const bare = (gauge: string, profile: string) =>
	circuit(
		{ b: ['battery'], l: ['load'] },
		[
			['b.pos', 'l.pos', { gauge }],
			['l.neg', 'b.neg', { gauge }]
		],
		{ profile }
	);
const bareFinding = (gauge: string, profile: string, unverified: boolean) => ({
	diagram: bare(gauge, profile),
	says: `W1 (${gauge.includes('mm') ? gauge : `${gauge} AWG`}) is fed from B + with no fuse or breaker between: nothing limits the current into a fault on it.`,
	at: ['conductor:W1'],
	severity: 'error' as const,
	unverified
});

/** A cranking supply with something tapped off the starter's stud. */
const tapped = (tapM: number) =>
	circuit(
		{ b: ['battery', { chemistry: 'lead-acid' }], st: ['starter-motor'], h: ['load'], f: ['inline-fuse', { fuseA: 15 }] },
		[
			['b.pos', 'st.pos', { gauge: '1/0', lengthM: 2.2, use: 'cranking' }],
			['st.neg', 'b.neg', { gauge: '1/0', lengthM: 2.2, use: 'cranking' }],
			['st.pos', 'f.in', { gauge: '14', lengthM: tapM }],
			['f.out', 'h.pos', { gauge: '14' }],
			['h.neg', 'st.neg', { gauge: '14' }]
		],
		{ ...LAW, cases: RUNNING }
	);

/** A battery of 12.8 V, 13.6 V into a short behind `milliohm`, and a bare circuit. */
const bareRun = (milliohm: number, lengthM: number) =>
	circuit({ b: ['battery', { faultResistanceMilliohm: milliohm }], l: ['load'] }, [
		['b.pos', 'l.pos', { lengthM }],
		['l.neg', 'b.neg', { lengthM }]
	]);
const bareRunFinding = (milliohm: number, lengthM: number, severity: 'fatal' | 'error') => ({
	diagram: bareRun(milliohm, lengthM),
	says: 'W1 (6 AWG) is fed from B + with no fuse or breaker between: nothing limits the current into a fault on it.',
	at: ['conductor:W1'],
	severity
});

testRule(unprotectedConductor, {
	valid: {
		'a lead of 72 in to the battery fuse': fused(1.8288, LAW),
		'a lead of 1.83 m by practice': fused(1.83),
		'a lead that is too long, with a fuse at its end: the fuse is misplaced': fused(3),
		'a fuse block on the battery post': circuit(
			{ b: ['battery'], f: ['fuse-block', { fuseA: 100 }], l: ['load'] },
			[
				['f.post', 'l.pos', { lengthM: 4 }],
				['l.neg', 'b.neg', { lengthM: 4 }]
			],
			{ mounts: { f: 'b.pos' } }
		),
		'a cranking supply, and 7 in off it to a fuse': tapped(0.1778),
		'a charger alone on its conductor: it limits itself': circuit({ m: ['mains-charger', { maxA: 30 }], l: ['load'] }, [
			['m.pos', 'l.pos', { gauge: '8' }],
			['l.neg', 'm.neg', { gauge: '8' }]
		]),
		'a jumper to a second battery of the bank': circuit(
			{ b1: ['battery'], b2: ['battery'], f: ['fuse-block'], l: ['load'] },
			[
				['b1.pos', 'b2.pos', { gauge: '2/0', lengthM: 0.3 }],
				['b1.neg', 'b2.neg', { gauge: '2/0', lengthM: 0.3 }],
				['f.post', 'l.pos'],
				['l.neg', 'b2.neg']
			],
			{ mounts: { f: 'b1.pos' } }
		),
		'a conductor across the poles, which is another fault': circuit({ b: ['battery'] }, [['b.pos', 'b.neg']])
	},
	invalid: {
		'a bare circuit, by numbers that were all seen': bareFinding('6', 'common-practice', false),
		'one whose amperage is from memory': bareFinding('0.5 mm²', 'common-practice', true),
		'one whose greatest device is from memory': bareFinding('6', 'caravan', true),
		'one where all of it is from memory': bareFinding('6 mm²', 'metric-small-craft', true),
		// 13.6 V over 2.7 mΩ is 5.04 kA, over 2.75 mΩ 4.95 kA.
		'more than 1 m behind more than 5 kA': bareRunFinding(2.7, 1.01, 'fatal'),
		'1 m behind more than 5 kA': bareRunFinding(2.7, 1, 'error'),
		'more than 1 m behind less than 5 kA': bareRunFinding(2.75, 1.01, 'error'),
		'a load straight on the battery': {
			diagram: circuit({ b: ['battery'], l: ['load'] }, [
				['b.pos', 'l.pos', { lengthM: null }],
				['l.neg', 'b.neg']
			]),
			says: 'W1 (6 AWG) is fed from B + with no fuse or breaker between: nothing limits the current into a fault on it.',
			remedy: 'Fit a fuse or breaker of at most 125 A within 1.83 m of B +, measured along the conductor.',
			at: ['conductor:W1'],
			severity: 'error',
			source: 'common practice, no source; 33 CFR 183.425 Table 5, 105 °C column',
			assumptions: ['Length of W1 taken as 1 m.']
		},
		'a load straight on the battery, by the law: 1.5 × 120 A': {
			diagram: circuit(
				{ b: ['battery'], l: ['load'] },
				[
					['b.pos', 'l.pos'],
					['l.neg', 'b.neg']
				],
				LAW
			),
			says: 'W1 (6 AWG) is fed from B + with no fuse or breaker between: nothing limits the current into a fault on it.',
			remedy: 'Fit a fuse or breaker of at most 175 A within 1.83 m of B +, measured along the conductor.',
			at: ['conductor:W1'],
			severity: 'error',
			source: '33 CFR 183.455(a), (b) and 183.460(a); 33 CFR 183.455(c)(1); 33 CFR 183.425 Table 5, 105 °C column'
		},
		'one missing main fuse once, however many conductors follow, and each thinner circuit': {
			diagram: circuit({ b: ['battery'], s: ['battery-disconnect'], p: ['positive-bus'], l: ['load'], m: ['load'], n: ['negative-bus'] }, [
				['b.pos', 's.in', { gauge: '2/0', lengthM: 2 }],
				['s.out', 'p.1', { gauge: '2/0', lengthM: 1 }],
				['p.2', 'l.pos', { gauge: '2/0' }],
				['p.3', 'm.pos', { gauge: '16' }],
				['l.neg', 'n.1', { gauge: '2/0' }],
				['m.neg', 'n.2', { gauge: '16' }],
				['n.3', 'b.neg', { gauge: '2/0' }]
			]),
			finds: [
				{
					says: 'W1 (2/0 AWG) is fed from B + with no fuse or breaker between: nothing limits the current into a fault on it. The same goes for W2 and W3.',
					at: ['conductor:W1', 'conductor:W2', 'conductor:W3'],
					severity: 'fatal'
				},
				{
					says: 'W4 (16 AWG) is fed from P stud 3 with no fuse or breaker between: nothing limits the current into a fault on it.',
					remedy: 'Fit a fuse or breaker of at most 25 A within 0.18 m of P stud 3, measured along the conductor.',
					at: ['conductor:W4'],
					severity: 'error'
				}
			]
		},
		'a horn tapped off the starter': {
			diagram: circuit(
				{ b: ['battery', { chemistry: 'lead-acid' }], st: ['starter-motor'], h: ['load'] },
				[
					['b.pos', 'st.pos', { gauge: '1/0', lengthM: 2.2, use: 'cranking' }],
					['st.neg', 'b.neg', { gauge: '1/0', lengthM: 2.2, use: 'cranking' }],
					['st.pos', 'h.pos', { gauge: '14' }],
					['h.neg', 'st.neg', { gauge: '14' }]
				],
				{ ...LAW, cases: RUNNING }
			),
			says: 'W3 (14 AWG) is fed from ST B+ with no fuse or breaker between: nothing limits the current into a fault on it.',
			remedy: 'Fit a fuse or breaker of at most 50 A within 0.18 m of ST B+, measured along the conductor.',
			at: ['conductor:W3'],
			severity: 'error'
		},
		'two batteries joined over three metres, no fuse at either': {
			diagram: circuit({ b1: ['battery'], b2: ['battery'] }, [
				['b1.pos', 'b2.pos', { gauge: '2/0', lengthM: 3 }],
				['b1.neg', 'b2.neg', { gauge: '2/0', lengthM: 3 }]
			]),
			says: 'W1 (2/0 AWG) is fed from B1 + with no fuse or breaker between: nothing limits the current into a fault on it.',
			at: ['conductor:W1'],
			severity: 'fatal'
		},
		'a capped spare straight off the battery': {
			diagram: circuit({ b: ['battery'], p: ['link-post'] }, [['b.pos', 'p.stud', { use: 'spare', gauge: '10' }]]),
			says: 'W1 (10 AWG) is fed from B + with no fuse or breaker between: nothing limits the current into a fault on it.',
			at: ['conductor:W1'],
			severity: 'error'
		}
	}
});
