import { describe, expect, test } from 'vitest';
import { buildStudy } from '#core/rules';
import { circuit } from '../../support/circuit.ts';

const diagram = circuit(
	{ b: ['battery'], l: ['load', { draw: 10 }], n: ['negative-bus'] },
	[
		['b.pos', 'l.pos', { lengthM: null }],
		['l.neg', 'n.1', { label: ' ' }],
		['n.2', 'b.neg']
	],
	{ cases: { surge: { order: 2, duration: 'surge', loads: 3 }, day: { order: 1 }, night: { order: 0, loads: 0.5 } } }
);
const study = buildStudy(diagram);

describe('a study', () => {
	test('solves the cases in their order', () => {
		expect(study.cases.map(({ id }) => id)).toEqual(['night', 'day', 'surge']);
	});

	test('keeps surges out of the continuous current', () => {
		const { continuous, surge } = study.conductor('W1');
		expect(continuous).toEqual({ currentA: expect.closeTo(10, 6), caseId: 'day' });
		expect(surge).toEqual({ currentA: expect.closeTo(30, 6), caseId: 'surge' });
	});

	test('says which lengths are assumed', () => {
		expect(study.conductor('W1')).toMatchObject({ lengthM: 1, lengthAssumed: true });
		expect(study.conductor('W2')).toMatchObject({ lengthM: 1, lengthAssumed: false });
	});

	test('gives everything a name', () => {
		expect(study.conductor('W1').name).toBe('W1');
		expect(study.conductor('W2').name).toBe('unlabelled conductor from L − to N stud 1');
		expect(study.studName('b.pos')).toBe('B +');
		expect(study.studName('gone.pos')).toBe('gone pos');
	});

	test('knows poles', () => {
		expect(study.conductors.map(({ pole }) => pole)).toEqual(['positive', 'negative', 'negative']);
	});

	test('at rest draws nothing, even with a switch that every case leaves open', () => {
		expect([...study.atRest.loadA]).toEqual([0]);
	});

	test('leaves out conductors without a terminal, and throws when asked for one', () => {
		const W1 = { ...diagram.conductors['W1']!, to: { part: 'gone', terminal: 'pos' } };
		const damaged = buildStudy({ ...diagram, conductors: { ...diagram.conductors, W1 } });
		expect(damaged.conductors.map(({ id }) => id)).toEqual(['W2', 'W3']);
		expect(() => damaged.conductor('W1')).toThrow('conductor "W1"');
		expect(damaged.conductorName('W1')).toBe('W1');
		expect(() => damaged.part('gone')).toThrow('part "gone"');
	});

	test('works out each thing once', () => {
		expect(study.network).toBe(study.network);
		expect(study.stacks).toBe(study.stacks);
		expect(study.stack('b.pos')).toBe(study.stacks.find(({ key }) => key === 'b.pos'));
	});
});
