import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { entriesOf, findEntries } from '../../src/ui/find/entries.ts';
import { circuit } from '../support/circuit.ts';

const diagram = circuit({ b: ['battery'], f: ['inline-fuse', { fuseA: 30 }], e: ['load', { draw: 40 }, { label: 'Kühlschrank' }] }, [
	['b.pos', 'f.in', { gauge: '6' }],
	['f.out', 'e.pos', { gauge: '14', label: 'W9' }],
	['e.neg', 'b.neg', { gauge: '35 mm²' }]
]);
const entries = entriesOf(diagram, checkDiagram(diagram).findings);
const names = (query: string) => findEntries(entries, query).map(({ kind, name }) => `${kind} ${name}`);

describe('finding on the drawing', () => {
	test('everything that has a name is there', () => {
		expect(entries.filter(({ kind }) => kind === 'part').map(({ name }) => name)).toEqual(['B', 'F', 'Kühlschrank']);
		expect(entries.filter(({ kind }) => kind === 'conductor')).toHaveLength(3);
		expect(entries.filter(({ kind }) => kind === 'stud')).toHaveLength(6);
		expect(entries.filter(({ kind }) => kind === 'finding').length).toBeGreaterThan(0);
	});

	test('what is called so comes first, then what begins so', () => {
		expect(names('w9')[0]).toBe('conductor W9');
		expect(names('b')[0]).toBe('part B');
		expect(names('b +')[0]).toBe('stud B +');
	});

	test('by kind, by size, by what lands on it, without accents', () => {
		expect(names('battery')[0]).toBe('part B');
		expect(names('35 mm')).toContain('conductor W3');
		expect(names('kuhl')[0]).toBe('part Kühlschrank');
		expect(names('w9')).toContain('stud Kühlschrank +');
	});

	test('by what a finding says', () => {
		const found = findEntries(entries, 'fuse').filter(({ kind }) => kind === 'finding');
		expect(found.length).toBeGreaterThan(0);
		for (const { finding, key } of found) expect([finding !== null, key !== null]).toEqual([true, true]);
	});

	test('nothing for what is not there, everything for nothing', () => {
		expect(names('windlass')).toEqual([]);
		expect(names('  ')).toHaveLength(entries.length);
	});
});
