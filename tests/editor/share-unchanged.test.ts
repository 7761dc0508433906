import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { shareUnchanged } from '../../src/editor/share-unchanged.ts';
import { smallDiagram } from '../support/small-diagram.ts';

test('a copy of the same diagram is the same diagram', () => {
	const before = smallDiagram();
	expect(shareUnchanged(before, structuredClone(before))).toBe(before);
});

test('an edit keeps the identity of everything but itself and what it is in', () => {
	const before = smallDiagram();
	const copy = structuredClone(before);
	copy.conductors['C2']!.lengthM = 3;
	const shared = shareUnchanged(before, copy);
	expect(shared.conductors['C2']).toEqual({ ...before.conductors['C2'], lengthM: 3 });
	expect(shared.conductors['C2']!.from).toBe(before.conductors['C2']!.from);
	expect(shared.conductors['C1']).toBe(before.conductors['C1']);
	expect(shared.parts).toBe(before.parts);
	expect(before.conductors['C2']!.lengthM).toBeNull();
});

test('another order of the same parts is another diagram, in that order', () => {
	const before = smallDiagram();
	const parts = Object.fromEntries(Object.entries(structuredClone(before.parts)).reverse());
	const shared = shareUnchanged(before, { ...structuredClone(before), parts });
	expect(Object.keys(shared.parts)).toEqual(Object.keys(before.parts).reverse());
	expect(shared.parts['B1']).toBe(before.parts['B1']);
});

test('whatever changed, the answer equals the copy, and what was before stays as it was', () => {
	const value = fc.letrec((tie) => ({
		any: fc.oneof(
			{ maxDepth: 3 },
			fc.constantFrom(null, 0, 1, true, 'a', ''),
			fc.array(tie('any'), { maxLength: 3 }),
			fc.dictionary(fc.constantFrom('a', 'b', 'c'), tie('any'), { noNullPrototype: true })
		)
	})).any;
	fc.assert(
		fc.property(value, value, (before, after) => {
			const [expected, untouched] = [structuredClone(after), structuredClone(before)];
			expect(shareUnchanged(before, after)).toEqual(expected);
			expect(before).toEqual(untouched);
		})
	);
});
