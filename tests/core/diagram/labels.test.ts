import { expect, test } from 'vitest';
import { freshId, nextLabel } from '#core/diagram';
import { relabelled } from '../../../src/core/diagram/labels.ts';
import { smallDiagram } from '../../support/small-diagram.ts';

const small = smallDiagram();

test('a fresh id is the first free one, the same each time', () => {
	expect(freshId(small.parts, 'F')).toBe('F2');
	expect(freshId(small.parts, 'L')).toBe('L1');
	expect(freshId({ L1: 0, L3: 0 }, 'L')).toBe('L2');
});

test('the next label is one above the highest with its prefix, whatever follows the number', () => {
	expect(nextLabel(small, 'F')).toBe('F2');
	expect(nextLabel(small, 'C')).toBe('C3');
	expect(nextLabel(small, 'INV')).toBe('INV1');
});

test('copies keep free labels, renew those in use, and share a number where they shared one', () => {
	const named = { ...small, parts: { ...small.parts, I: { ...small.parts['P1']!, label: 'INV' } } };
	expect(Object.fromEntries(relabelled(named, ['C1+', 'C1-', 'C2+', 'C2-', 'INV', 'X7', '']))).toEqual({
		'C1+': 'C3+',
		'C1-': 'C3-',
		'C2+': 'C4+',
		'C2-': 'C4-',
		INV: 'INV2',
		X7: 'X7'
	});
});
