import fc from 'fast-check';
import { expect, test } from 'vitest';
import { findJsonFault } from '../../../src/core/diagram/json-fault.ts';

/** The engine's own JSON.parse is the judge of what is JSON. */
const isJson = (text: string): boolean => {
	try {
		JSON.parse(text);
		return true;
	} catch {
		return false;
	}
};

test('finds no fault in JSON', () => {
	fc.assert(
		fc.property(fc.json({ maxDepth: 4 }), fc.constantFrom(undefined, 1, '\t'), (text, indent) => {
			expect(findJsonFault(JSON.stringify(JSON.parse(text), null, indent))).toBeNull();
		}),
		{ numRuns: 200 }
	);
});

test('finds a fault exactly where JSON.parse refuses a text', () => {
	const piece = fc.constantFrom('{', '}', '[', ']', ':', ',', '"a"', '"', ' ', '1', '-', '.5', 'e9', '01', 'true', 'nul', '\\u12', '\n');
	fc.assert(
		fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
			const text = pieces.join('');
			expect(findJsonFault(text) === null, JSON.stringify(text)).toBe(isJson(text));
		}),
		{ numRuns: 3000 }
	);
});

test('cutting a text short is found at its end', () => {
	fc.assert(
		fc.property(fc.json({ maxDepth: 3 }), fc.nat(), (json, cut) => {
			const text = `[${json}]`.slice(0, 1 + (cut % json.length));
			const fault = findJsonFault(text);
			expect(fault).not.toBeNull();
		})
	);
});
