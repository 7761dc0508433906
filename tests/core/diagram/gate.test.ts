import { describe, expect, test } from 'vitest';
import { gate, type Gate } from '#core/diagram';

const GATE: Gate = { format: 'f', thing: 'a thing', characters: 10_000_000, values: 1_000, remedy: 'Choose another.' };
const told = (input: unknown): string => {
	const passed = gate(input, GATE);
	if (passed.ok) return 'passed';
	const { what, why, remedy } = passed.problem;
	for (const text of [what, why, remedy]) expect(text).toMatch(/^[A-Z][^]*[.!]$/);
	return `${passed.reason}: ${what}`;
};
const nested = (levels: number, inner = '1') => `{"format":"f","a":${'['.repeat(levels)}${inner}${']'.repeat(levels)}}`;

describe('the gate lets pass', () => {
	test.each(['{"format":"f"}', '\uFEFF {"format":"f","x":[1,"a",null,true,{"b":-1e300}]}', nested(39)])('%s', (text) => {
		expect(told(text)).toBe('passed');
		expect(told(JSON.parse(text.replace('\uFEFF', '')))).toBe('passed');
	});
});

describe('the gate refuses', () => {
	test.each([
		[
			'text that is too long',
			' '.repeat(10_000_001),
			'large: This file is too large: it has 10,000,001 characters, and at most 10,000,000 are read.'
		],
		['nothing', ' \n', 'empty: This file is empty.'],
		['what is no JSON', '{"format":"f"', 'broken: At line 1, column 14 the file ends where a comma or } should be.'],
		['another format', '{"format":"g"}', 'format: This is not a thing.'],
		['a list', '["format"]', 'format: This is not a thing.'],
		['nothing at all, parsed', null, 'format: This is not a thing.'],
		[
			'a name every object inherits',
			'{"format":"f","a":[{"__proto__":{"x":1}}]}',
			'reserved: The file uses the name "__proto__", which is reserved.'
		],
		['another such name', '{"format":"f","constructor":1}', 'reserved: The file uses the name "constructor", which is reserved.'],
		['depth', nested(50), 'deep: This file is nested too deeply.'],
		['depth without end', nested(1_000_000), 'deep: This file is nested too deeply.'],
		['numbers beyond all measure', nested(1, '1e999'), 'infinite: A number in this file is larger than can be worked with.'],
		['too many values', nested(1, Array(1_001).fill('1').join(',')), 'many: There is too much in this file.']
	])('%s', (_, input, reason) => {
		expect(told(input)).toBe(reason);
	});
});
