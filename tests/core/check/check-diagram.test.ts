import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDiagram, subjectText, type CheckResult } from '#core/check';
import { circuit } from '../../support/circuit.ts';
import { randomDiagram } from '../../support/random-diagram.ts';

const SEVERITIES = ['fatal', 'error', 'warning', 'note'];

/** A battery, a fuse block on its post and a 5 A load: 2 m of 12 AWG each way. */
const lamp = circuit(
	{ b: ['battery', { emfV: 12.6, resistanceMilliohm: 5 }], f: ['fuse-block', { fuseA: 30 }], l: ['load', { draw: 5 }] },
	[
		['f.post', 'l.pos', { gauge: '12', lengthM: 2 }],
		['l.neg', 'b.neg', { gauge: '12', lengthM: 2 }]
	],
	{ mounts: { f: 'b.pos' } }
);

describe('checking a diagram', () => {
	test('gives each conductor its figures', () => {
		const { conductors, studV, stacks, profileName } = checkDiagram(lamp);
		expect(conductors['W1']).toMatchObject({
			// 33 CFR 183.425 Table 5: 12 AWG, 105 °C.
			ampacityA: 45,
			// By hand: 30 + 75·(5/45)².
			workingC: expect.closeTo(30.926, 3) as number,
			continuousA: expect.closeTo(5, 6),
			continuousCase: 'on',
			letThroughA: 30,
			protectedBy: ['F 30 A'],
			protectors: ['f'],
			lengthM: 2,
			lengthAssumed: false,
			pole: 'positive'
		});
		// 0.01787 × 2 / 3.309 = 10.80 mΩ and two joints of 0.2 mΩ: 11.20 mΩ × 5 A.
		expect(conductors['W1']!.dropV).toBeCloseTo(0.056, 4);
		expect(studV['on']!['b.pos']! - studV['on']!['b.neg']!).toBeCloseTo(12.6 - 5 * 0.005, 6);
		expect(Object.keys(studV['on']!)).not.toContainEqual(expect.stringContaining('@'));
		expect(stacks['b.pos']).toMatch(/^M8 stud \(\+\), from the seat: fuse block F; /);
		expect(profileName).toMatch(/common practice/i);
	});

	test('gives the short-circuit current of each positive stud, to the return beside it', () => {
		const { studFaultA } = checkDiagram(lamp);
		// 100 Ah of lithium: 13.6 V behind 2.5 mΩ. Then the fuse, 2.67 mΩ, and 2 × (2 m of 12 AWG at 20 °C, 10.42 mΩ, and joints of 0.4 mΩ).
		expect(studFaultA['b.pos']).toBeCloseTo(13.6 / 0.0025, 0);
		expect(studFaultA['l.pos']! / (13.6 / (0.0025 + 0.08 / 30 + 2 * (0.01042 + 0.0004)))).toBeCloseTo(1, 2);
		expect(studFaultA['b.neg']).toBeUndefined();
	});

	test('finds nothing in a sound circuit', () => {
		const sound = circuit(
			{
				b: ['battery', { faultResistanceMilliohm: 2.5 }],
				f: ['fuse-block', { fuseA: 30 }],
				q: ['battery-disconnect'],
				l: ['load', { draw: 12 }]
			},
			[
				['f.post', 'q.in', { gauge: '12', lengthM: 1 }],
				['q.out', 'l.pos', { gauge: '12', lengthM: 1 }],
				['l.neg', 'b.neg', { gauge: '12', lengthM: 2 }]
			],
			{ mounts: { f: 'b.pos' } }
		);
		expect(checkDiagram(sound).findings.map(({ message }) => message)).toEqual([]);
	});

	test('finds nothing in an empty diagram, and says that it has no currents', () => {
		const { findings, notChecked } = checkDiagram(circuit({}));
		expect(findings).toEqual([]);
		expect(notChecked).toContain('Currents: the diagram has no battery or other source.');
	});

	test('says what it assumed', () => {
		const { assumptions } = checkDiagram(circuit({ b: ['battery'], p: ['positive-bus'] }, [['b.pos', 'p.1', { lengthM: null }]]));
		expect(assumptions).toContain('1 m of length for W1.');
		expect(assumptions).toContain('A flat washer, a lock washer and a nut on 2 studs where none are drawn.');
	});

	test('says what it did not check', () => {
		const unknown = circuit({ b: ['battery'], u: ['fuel-cell'] }, [['b.pos', 'u.plus']], { cases: {}, profile: 'moon-law' });
		const { notChecked } = checkDiagram(unknown);
		expect(notChecked).toEqual(
			expect.arrayContaining([
				expect.stringMatching(/^The rules of profile “moon-law”/),
				'Currents: the diagram has no operating case.',
				'U: of a kind this version does not know.',
				'W1: an end is on no terminal.'
			])
		);
	});
});

describe('a fatal fault', () => {
	/** 100 A through 14 AWG, with and without a conductor across the poles. */
	const overloaded = (short: boolean) =>
		circuit({ b: ['battery'], l: ['load', { draw: 100 }], c: ['battery'], m: ['load', { draw: 100 }] }, [
			['b.pos', 'l.pos', { gauge: '14' }],
			['l.neg', 'b.neg', { gauge: '14' }],
			['c.pos', 'm.pos', { gauge: '14' }],
			['m.neg', 'c.neg', { gauge: '14' }],
			...(short ? [['b.pos', 'b.neg', { id: 'short' }] as const] : [])
		]);
	const placesOf = ({ findings }: CheckResult, rule: string) => findings.filter((f) => f.rule === rule).map((f) => f.subjects[0]!.id);

	test('holds back what depends on currents in its island, and only there', () => {
		expect(placesOf(checkDiagram(overloaded(false)), 'undersized-conductor')).toEqual(expect.arrayContaining(['W1', 'W3']));

		const shorted = checkDiagram(overloaded(true));
		expect(shorted.findings[0]).toMatchObject({ rule: 'wire-across-poles', severity: 'fatal' });
		expect(placesOf(shorted, 'undersized-conductor')).not.toContain('W1');
		expect(placesOf(shorted, 'undersized-conductor')).toContain('W3');
		expect(shorted.notChecked[0]).toMatch(/^Currents, protection and voltage drop: held back until the fatal finding is put right/);
	});
});

describe('any diagram that passes the schema', () => {
	test('is checked without throwing, in whole sentences, the same way twice', () => {
		fc.assert(
			fc.property(randomDiagram, (diagram) => {
				const before = JSON.stringify(diagram);
				const result = checkDiagram(diagram);
				expect(checkDiagram(diagram)).toEqual(result);
				expect(JSON.stringify(diagram)).toBe(before);

				const { findings, notChecked, assumptions, stacks } = result;
				expect(new Set(findings.map(({ key }) => key)).size).toBe(findings.length);
				const ranks = findings.map(({ severity }) => SEVERITIES.indexOf(severity));
				expect(ranks).toEqual(ranks.toSorted());
				for (const { message, remedy, subjects } of findings) {
					expect(`${message} ${remedy}`).not.toMatch(/undefined|NaN|\[object|Infinity/);
					for (const subject of subjects) expect(subjectText(diagram, subject)).not.toBe('');
				}
				for (const text of [...notChecked, ...assumptions, ...Object.values(stacks)])
					expect(text).not.toMatch(/undefined|NaN|\[object|Infinity/);
				for (const figures of Object.values(result.conductors)) {
					expect(Number.isFinite(figures.continuousA + figures.surgeA + figures.dropV + figures.ampacityA)).toBe(true);
				}
			}),
			{ numRuns: 150 }
		);
	}, 60_000);
});
