/** RFC 4180 for the form; which characters begin a formula is OWASP's list for CSV injection. */
import { describe, expect, test } from 'vitest';
import { csvOf, type Cell, type Table } from '#core/reports';

type Pair = readonly [Cell, Cell];
const table = (...rows: readonly Pair[]): Table => ({
	id: 't',
	title: 'A table',
	columns: [
		{ id: 'a', title: 'Name', kind: 'text' },
		{ id: 'b', title: 'Length', kind: 'number', unit: 'm' }
	],
	rows: rows.map(([a, b]) => ({ cells: { a, b } })),
	whenEmpty: '',
	notes: []
});
const lines = (...rows: readonly Pair[]): string[] =>
	csvOf([table(...rows)])
		.slice(1)
		.split('\r\n')
		.slice(1, -1);

test('begins with a byte order mark and a head with units, and ends every line with CR LF', () => {
	expect(csvOf([table(['W1', 2.5])])).toBe('\uFEFFName,Length (m)\r\nW1,2.5\r\n');
});

describe('a field', () => {
	test('with comma, quote or line break is quoted, quotes doubled', () => {
		expect(lines(['a,b', 1], ['say "x"', 2], ['two\nlines', 3])).toEqual(['"a,b",1', '"say ""x""",2', '"two\nlines",3']);
	});
	test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1'])('%j is no formula', (text) => {
		const [line] = csvOf([table([text, 1])])
			.slice(1)
			.split('\r\n')
			.slice(1) as [string];
		expect(line.replace(/^"/, '').startsWith("'")).toBe(true);
	});
	test('that is a number stays one, negative ones too', () => {
		expect(lines(['x', -1.5], ['y', 0.1 + 0.2], ['z', Infinity], ['n', null])).toEqual(['x,-1.5', 'y,0.3', 'z,unlimited', 'n,']);
	});
	test('with a semicolon is quoted, for spreadsheets that part fields by it', () => {
		expect(lines(['a;=1+1', 1])).toEqual(['"a;=1+1",1']);
	});
	test('a designation ending in a minus sign is left alone', () => expect(lines(['W1−', 1])).toEqual(['W1−,1']));
});

test('several tables follow one another under their titles', () => {
	expect(csvOf([table(['a', 1]), table(['b', 2])])).toBe(
		'\uFEFFA table\r\nName,Length (m)\r\na,1\r\n\r\nA table\r\nName,Length (m)\r\nb,2\r\n'
	);
});
