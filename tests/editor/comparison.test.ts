import { expect, test } from 'vitest';
import { change, issueRevision, setParams } from '#core/diagram';
import { comparison } from '../../src/editor/comparison.ts';
import { circuit } from '../support/circuit.ts';

test('two states come as plain data, and one that is not there as null', () => {
	const drawn = circuit({ f: ['inline-fuse', { fuseA: 100 }, { label: 'F3' }] }, []);
	const issued = change(drawn, issueRevision({ id: 'a', letter: 'A', date: '2026-03-01', by: 'A', why: 'First.' })).diagram;
	const now = change(issued, setParams({ parts: ['f'], params: { fuseA: 80 } })).diagram;
	const compared = comparison(now, { before: 'a', after: null })!;
	expect(compared.changes.map(({ name, text }) => `${name} ${text}`)).toEqual(['F3 100 A to 80 A']);
	expect(compared.marks.marks).toEqual({ 'part:f': 'changed' });
	expect(compared.sheet.title).toBe('Change sheet, revision A to the drawing as it stands');
	expect(structuredClone(compared)).toEqual(compared);
	expect(comparison(now, { before: 'gone', after: null })).toBeNull();
});
