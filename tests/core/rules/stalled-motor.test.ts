import { expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { circuit } from '../../support/circuit.ts';
import { testRule } from '../../support/rule-tester.ts';
import { stalledMotor } from '../../../src/core/rules/stalled-motor.ts';

/** A pump that draws 34 A when stalled at 12 V, 7 m from a battery of 12.6 V behind 5 mΩ. */
const pump = (gauge: string, fuseA: number, params: Record<string, boolean | number | null> = {}, fuse: Record<string, string> = {}) =>
	circuit(
		{
			b: ['battery', { chemistry: 'lead-acid', emfV: 12.6, resistanceMilliohm: 5 }],
			f: ['inline-fuse', { fuseA, ...fuse }],
			l: ['load', { draw: 8.5, stallA: 34, unattended: true, ...params }]
		},
		[
			['b.pos', 'f.in', { gauge: '8', lengthM: 0.1 }],
			['f.out', 'l.pos', { gauge, lengthM: 7 }],
			['l.neg', 'b.neg', { gauge, lengthM: 7 }]
		]
	);

// Worked by hand: 0.8 × 12.6 V / (12 V / 34 A + 14 × 8.59 mΩ + 5 mΩ + …) on 14 AWG is about 21 A; on 8 AWG 25.7 A.
const breaker = (ratingA: number) =>
	circuit(
		{
			b: ['battery', { chemistry: 'lead-acid', emfV: 12.6, resistanceMilliohm: 5 }],
			q: ['circuit-breaker', { ratingA }],
			l: ['load', { draw: 8.5, stallA: 34, unattended: true }]
		},
		[
			['b.pos', 'q.in', { gauge: '8', lengthM: 0.1 }],
			['q.out', 'l.pos', { gauge: '8', lengthM: 7 }],
			['l.neg', 'b.neg', { gauge: '8', lengthM: 7 }]
		]
	);

type Fuse = Record<string, string | number>;
const behindAnother = (first: Fuse, second: Fuse) =>
	circuit(
		{
			b: ['battery', { chemistry: 'lead-acid', emfV: 12.6, resistanceMilliohm: 5 }],
			f: ['inline-fuse', first],
			f2: ['inline-fuse', second],
			l: ['load', { draw: 8.5, stallA: 34, unattended: true }]
		},
		[
			['b.pos', 'f.in', { gauge: '8', lengthM: 0.1 }],
			['f.out', 'f2.in', { gauge: '8', lengthM: 0.1 }],
			['f2.out', 'l.pos', { gauge: '8', lengthM: 7 }],
			['l.neg', 'b.neg', { gauge: '8', lengthM: 7 }]
		]
	);

testRule(stalledMotor, {
	valid: {
		'15 A on 8 AWG': pump('8', 15),
		'a slow fuse of 12 A before a quick one of 15 A, which is in time': behindAnother({ family: 'cylindrical', fuseA: 12 }, { fuseA: 15 }),
		'a breaker of which no curve is known, at a little more than 1.6 times': breaker(15.95),
		'a load of which no stalled current is given': pump('14', 30, { stallA: null })
	},
	invalid: {
		'30 A on 14 AWG': {
			diagram: pump('14', 30),
			says: 'Stalled and warm, L draws 20.9 A; F (30 A) need not open at that.',
			at: ['part:l', 'part:f'],
			severity: 'error'
		},
		'15 A on 14 AWG, just above what it holds': {
			diagram: pump('14', 15),
			says: 'Stalled and warm, L draws 20.8 A; F (15 A) need not open at that.',
			at: ['part:l', 'part:f'],
			severity: 'error'
		},
		'a breaker at a little less than 1.6 times': {
			diagram: breaker(16.1),
			says: 'Stalled and warm, L draws 25.6 A; Q (16.1 A) need not open at that.',
			at: ['part:l', 'part:q'],
			severity: 'error'
		},
		'a slow fuse at 1.7 times': {
			diagram: pump('8', 15, {}, { family: 'limiter' }),
			says: 'Stalled and warm, L draws 25.5 A; F (15 A) may take 106 s, and 60 s is the most a motor bears.',
			at: ['part:l', 'part:f'],
			severity: 'error'
		},
		'two in series, none in time: the sooner one speaks': {
			diagram: behindAnother({ family: 'cylindrical', fuseA: 12 }, { family: 'limiter', fuseA: 15 }),
			says: 'Stalled and warm, L draws 25.1 A; F2 (15 A) may take 2.2 min, and 60 s is the most a motor bears.',
			at: ['part:l', 'part:f2'],
			severity: 'error'
		},
		'a motor with somebody there': {
			diagram: pump('14', 30, { unattended: false }),
			says: 'Stalled and warm, L draws 20.9 A; F (30 A) need not open at that.',
			at: ['part:l', 'part:f'],
			severity: 'warning'
		},
		'no fuse of its own': {
			diagram: circuit({ b: ['battery'], l: ['load', { stallA: 34 }] }, [
				['b.pos', 'l.pos'],
				['b.neg', 'l.neg']
			]),
			says: 'Stalled and warm, L draws 29.3 A, and no single fuse or breaker of its own ends it.',
			at: ['part:l'],
			severity: 'warning'
		}
	}
});

test('a check of everything gives the same: nothing kept of the motor as it runs is used for it held fast', () => {
	const found = checkDiagram(pump('14', 30)).findings.find(({ rule }) => rule === 'stalled-motor');
	expect(found?.message).toBe('Stalled and warm, L draws 20.9 A; F (30 A) need not open at that.');
});
