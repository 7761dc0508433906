/* eslint-disable @typescript-eslint/no-explicit-any -- files are broken here in ways no type allows */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseDiagram, serializeDiagram, type Diagram, type ParseResult } from '#core/diagram';
import { SIZE_LIMIT } from '../../../src/core/diagram/parse.ts';
import { smallDiagram } from '../../support/small-diagram.ts';

const opened = (result: ParseResult) => {
	if (!result.ok) throw new Error(result.problems.map(({ what }) => what).join('\n'));
	return result;
};
const problem = (input: unknown) => {
	const result = parseDiagram(input);
	if (result.ok) throw new Error('It opened.');
	for (const { what, why, remedy } of result.problems) expect([what, why, remedy].every((text) => text.length > 10)).toBe(true);
	return result.problems[0];
};
const raw = (change: (diagram: any) => void): unknown => {
	const diagram = JSON.parse(serializeDiagram(smallDiagram()));
	change(diagram);
	return diagram;
};
/** Notes of a file changed by hand; the result must need no second mending. */
const mended = (change: (diagram: any) => void): { diagram: Diagram; notes: readonly string[] } => {
	const { diagram, notes } = opened(parseDiagram(raw(change)));
	expect(opened(parseDiagram(serializeDiagram(diagram)))).toEqual({ ok: true, diagram, notes: [], migratedFrom: null });
	return { diagram, notes };
};

describe('a good file', () => {
	test('opens as it was saved', () => {
		expect(opened(parseDiagram(serializeDiagram(smallDiagram())))).toEqual({
			ok: true,
			diagram: smallDiagram(),
			notes: [],
			migratedFrom: null
		});
	});
	test('may begin with a byte order mark', () => {
		expect(parseDiagram(`\uFEFF${serializeDiagram(smallDiagram())}`).ok).toBe(true);
	});
	test('keeps parts of kinds this program does not know', () => {
		const { diagram } = mended((d) => (d.parts.B1.kind = 'fuel-cell'));
		expect(diagram.parts['B1']!.kind).toBe('fuel-cell');
	});
});

describe('saving', () => {
	test('writes the same text whatever the order things were drawn in', () => {
		const { parts, conductors, ...rest } = smallDiagram();
		const backwards = { conductors: Object.fromEntries(Object.entries(conductors).reverse()), ...rest, parts };
		expect(serializeDiagram(backwards)).toBe(serializeDiagram(smallDiagram()));
	});
	test('counts numbers in ids, keeps the fields of a point together, ends with a newline', () => {
		const small = smallDiagram();
		const text = serializeDiagram({ ...small, parts: { D10: small.parts['D1']!, D2: small.parts['D1']!, ...small.parts } });
		expect(text.indexOf('"D2"')).toBeLessThan(text.indexOf('"D10"'));
		expect(text.indexOf('"format"')).toBeLessThan(text.indexOf('"parts"'));
		expect(text.endsWith('}\n')).toBe(true);
	});
});

describe('text that is not JSON', () => {
	test.each([
		['{\n\t"format": "x"\n\t"version": 1\n}', 'At line 3, column 2 there is "\\"" where a comma or } should be.'],
		['{ "a": [1, 2', 'At line 1, column 13 the file ends where a comma or ] should be.'],
		['{ "a": tru }', 'At line 1, column 8 there is "t" where a value should be.'],
		['{ "a": "no end }', 'At line 1, column 8 there is "\\"" where a text closed by a double quote on the same line should be.'],
		["{ 'a': 1 }", 'At line 1, column 3 there is "\'" where a name in double quotes should be.'],
		['{ "a" 1 }', 'At line 1, column 7 there is "1" where a colon after the name should be.'],
		['{ "a": 1, }', 'At line 1, column 11 there is "}" where a name in double quotes should be.'],
		['[1, 2] x', 'At line 1, column 8 there is "x" where the end of the file should be.'],
		['{ "a": 01 }', 'At line 1, column 8 there is "0" where a value should be.'],
		['', 'This file is empty.']
	])('%j', (text, what) => {
		expect(problem(text).what).toBe(what);
	});
	test('the place is also given by itself', () => {
		expect(problem('{').path).toBe('line 1, column 2');
	});
	test('a file beyond the size limit is not even read', () => {
		expect(problem(' '.repeat(SIZE_LIMIT + 1)).what).toBe(
			'This file is too large: it has 20,000,001 characters, and at most 20,000,000 are read.'
		);
	});
});

describe('JSON that is not a diagram', () => {
	test.each([
		['a list', []],
		['nothing', null],
		['a number', 3],
		['another format', { format: 'other' }]
	])('%s', (_, input) => {
		expect(problem(input).what).toBe('This is not a Wireworthy diagram.');
	});
	test('a newer version', () => {
		expect(problem(raw((d) => (d.version = 2))).what).toBe(
			'This file was saved in version 2 of the format; this program knows versions up to 1.'
		);
	});
	test.each([[-1], [0.5], ['1'], [undefined]])('version %s', (version) => {
		expect(problem(raw((d) => (d.version = version))).path).toBe('version');
	});
});

describe('a diagram with mistakes', () => {
	test.each<[string, (d: any) => void, string, string, string]>([
		[
			'a wrong choice',
			(d) => (d.parts.B1.rotation = 45),
			'parts.B1.rotation',
			'"parts.B1.rotation" is 45, which is not among the values possible here.',
			'Use one of 0, 90, 180, 270.'
		],
		[
			'a missing field',
			(d) => delete d.parts.B1.label,
			'parts.B1.label',
			'"parts.B1.label" is missing.',
			'Add it; it should be a text in double quotes.'
		],
		[
			'a wrong type',
			(d) => (d.conductors.C1.label = 3),
			'conductors.C1.label',
			'"conductors.C1.label" is 3.',
			'Make it a text in double quotes.'
		],
		[
			'an unknown field',
			(d) => (d.parts.B1.colour = 'red'),
			'parts.B1',
			'"parts.B1" contains "colour", which this format does not have.',
			'Correct the name or take it out.'
		],
		[
			'too much',
			(d) => (d.conductors.C1.lengthM = 5000),
			'conductors.C1.lengthM',
			'"conductors.C1.lengthM" is 5000, which is more than 1000.',
			'Bring it to 1000 or less.'
		],
		[
			'too little',
			(d) => (d.conductors.C1.lengthM = 0),
			'conductors.C1.lengthM',
			'"conductors.C1.lengthM" is 0, which is not more than 0.',
			'Bring it above 0.'
		],
		[
			'a colour of no scheme',
			(d) => (d.conductors.C1.colour = 'puce'),
			'conductors.C1.colour',
			'"conductors.C1.colour" is "puce".',
			'Use one of "auto", "red", "black", "yellow", "green", "green-yellow", "brown", "blue", "grey", "white", "orange", "violet", "pink", "tan".'
		],
		[
			'an id that is none',
			(d) => (d.parts['a.b'] = d.parts.B1),
			'parts.a.b',
			'"parts.a.b" has a name that cannot be an id.',
			'An id is 1 to 64 letters, digits, "-" or "_".'
		]
	])('%s', (_, change, path, what, remedy) => {
		expect(problem(raw(change))).toMatchObject({ path, what, remedy });
	});

	test('the first twenty problems are told, and how many more there are', () => {
		const result = parseDiagram(raw((d) => Object.assign(d.parts, Object.fromEntries(Array.from({ length: 30 }, (_, n) => [`X${n}`, 1])))));
		expect(!result.ok && result.problems).toHaveLength(21);
		expect(!result.ok && result.problems.at(-1)!.what).toBe('There are 10 more of this sort.');
	});

	test.each(['__proto__', 'constructor', 'prototype', 'toString'].filter((key) => key in Object.prototype))(
		'the reserved name %s',
		(key) => {
			const text = serializeDiagram(smallDiagram()).replaceAll('"P1"', JSON.stringify(key));
			expect(problem(text).what).toBe(`The file uses the name "${key}", which is reserved.`);
			expect(({} as Record<string, unknown>)['kind']).toBeUndefined();
		}
	);
});

describe('references to what is not in the file', () => {
	test('a conductor keeps its end, on a placeholder', () => {
		const { diagram, notes } = mended((d) => delete d.parts.P1);
		expect(Object.keys(diagram.conductors)).toEqual(['C1', 'C2', 'C3']);
		expect(diagram.parts['P1']).toMatchObject({ kind: 'missing-part', label: 'P1' });
		expect(notes).toEqual(['C2+ ends on a part "P1" that is not in the file. A placeholder was set there; replace it or move the end.']);
	});
	test('a conductor from a stud to itself is told', () => {
		const { diagram, notes } = opened(parseDiagram(raw((d) => (d.conductors.C2.to = d.conductors.C2.from))));
		expect(notes).toEqual(['C2+ has both ends on the same stud. Move one end to where it belongs.']);
		expect(diagram.conductors['C2']).toBeDefined();
	});
	test('a block whose host is missing stands by itself', () => {
		const { diagram, notes } = mended((d) => {
			d.mounts.F1 = { part: 'X', terminal: 'pos' };
			delete d.stacks['B1.pos'];
		});
		expect(diagram.mounts).toEqual({});
		expect(notes).toEqual(['F1 sat on a part "X" that is not in the file; it now stands by itself.']);
	});
	test('a mount of a missing block, and mounts in a ring, are taken out', () => {
		expect(mended((d) => (d.mounts.X = { part: 'B1', terminal: 'neg' })).notes).toEqual([
			'A fuse block "X" that is not in the file was said to sit on B1; that was left out.'
		]);
		const { diagram, notes } = mended((d) => (d.mounts.B1 = { part: 'F1', terminal: 'out' }));
		expect(notes[0]).toBe('F1 sat on itself, directly or over other blocks; it now stands by itself.');
		expect(diagram.mounts).toEqual({ B1: { part: 'F1', terminal: 'out' } });
	});
	test('a stack names only what lands on the stud', () => {
		const { diagram, notes } = mended((d) =>
			d.stacks['D1.L'].push({ kind: 'lug', conductor: 'C3', end: 'to' }, { kind: 'block', block: 'X' })
		);
		expect(diagram.stacks['D1.L']).toEqual(smallDiagram().stacks['D1.L']);
		expect(notes).toEqual(['The order on stud L of D1 named 2 things not landing there; left out.']);
	});
	test('a level of a missing part, and a file without cases', () => {
		expect(mended((d) => (d.cases.peak.levels.X = 1)).notes).toEqual([
			'The case "Peak, no charging" set a level for a part "X" that is not in the file; left out.'
		]);
		const { diagram, notes } = mended((d) => (d.cases = {}));
		expect(Object.keys(diagram.cases)).toEqual(['peak', 'charging']);
		expect(notes).toEqual(['The file had no operating case; the two usual ones were added.']);
	});
});

describe('older versions', () => {
	test('a file of version 0', () => {
		const { diagram, notes, migratedFrom } = opened(parseDiagram(readFileSync('tests/diagrams/version-0.json', 'utf8')));
		expect(migratedFrom).toBe(0);
		expect(notes).toEqual([]);
		expect(diagram.conductors['C1']).toMatchObject({ gauge: { system: 'awg', size: '2/0' }, lengthM: 1.25, use: 'ordinary' });
		expect(diagram.conductors['C2']).toMatchObject({ gauge: { system: 'iec', size: '16' }, lengthM: null, colour: 'black' });
		expect(diagram.stacks).toEqual({});
		expect(diagram.titleBlock.title).toBe('First trailer');
	});
	test('a mistake in it is told like any other', () => {
		const text = readFileSync('tests/diagrams/version-0.json', 'utf8').replace('"16 mm2"', '"thick"');
		expect(problem(text)).toMatchObject({ path: 'conductors.C2.gauge' });
	});
});
