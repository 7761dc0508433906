/** The same check and packet for readers who measure otherwise: every figure follows, and nothing is judged differently. */
import { afterEach, describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import type { Diagram } from '#core/diagram';
import { LAPSES_BEYOND } from '#core/rules';
import { cellText, columnTitle, reportInput, sectionsOf } from '#core/reports';
import { PLAIN_READER, printFor, type Reader } from '#core/units';
import { BUILDERS } from '../../support/examples/all.ts';

const DIAGRAMS = Object.entries(BUILDERS).map(([name, build]) => [name, build()] as const);

const AMERICAN: Reader = { decimal: '.', long: 'ft', short: 'in', temperature: '°F', gauge: 'awg' };
const GERMAN: Reader = { decimal: ',', long: 'm', short: 'mm', temperature: '°C', gauge: 'iec' };
const readBy = (reader: Reader) => printFor(() => reader);
afterEach(() => readBy(PLAIN_READER));

/** A length or temperature in a unit that Americans do not read. Tubing is sold by millimetres everywhere (9/3 mm). */
const METRIC = /(?<!\/)\b\d+ (?:m|mm|cm|°C|K)(?![\w²·/])/u;
/** What a standard calls its columns, and what the author of the drawing wrote, stays. */
const QUOTED = /CFR|IEC|ISO|no source|River workboat/;
/** A point between digits that is neither of a clause, a standard or a designation. */
const POINT = /(?<![\d.\w§])\d+\.\d+ ?(?:[%×]|k?A|m?V|mΩ|Ω|W|Ah|Wh|mm|m|°C|K|N·m)(?![\w.])/u;

const check = (diagram: Diagram, reader: Reader) => {
	readBy(reader);
	return checkDiagram(diagram);
};

describe.each(DIAGRAMS)('%s', (_, example) => {
	const saidTo = (reader: Reader) =>
		check(example, reader).findings.flatMap(({ message, remedy, assumptions }) => [message, remedy, ...assumptions]);
	const writtenFor = (reader: Reader) => {
		readBy(reader);
		return sectionsOf(reportInput(example)).flatMap(({ tables }) =>
			tables.flatMap(({ columns, rows, lead = '' }) => [
				lead,
				...columns.map(columnTitle),
				...rows.flatMap(({ cells }) => columns.map((column) => cellText(column, cells[column.id] ?? null)))
			])
		);
	};

	test('findings have the reader’s units', () => {
		expect(saidTo(AMERICAN).filter((text) => METRIC.test(text))).toEqual([]);
		expect(saidTo(GERMAN).filter((text) => POINT.test(text))).toEqual([]);
	});

	test('so have the tables of the packet', () => {
		expect([
			...new Set(writtenFor(AMERICAN).filter((text) => (METRIC.test(text) && !QUOTED.test(text)) || /\((m|mm|°C)\)$/.test(text)))
		]).toEqual([]);
		expect([...new Set(writtenFor(GERMAN).filter((text) => POINT.test(text)))]).toEqual([]);
	});

	test('the same is found, and acceptances hold: their figures are the same but for rounding', () => {
		const [plain, ...others] = [PLAIN_READER, AMERICAN, GERMAN].map((reader) => check(example, reader).findings);
		for (const other of others) {
			expect(other.map(({ key }) => key)).toEqual(plain!.map(({ key }) => key));
			other.forEach(({ key, numbers }, index) => {
				const expected = plain![index]!.numbers;
				expect(Object.keys(numbers), key).toEqual(Object.keys(expected));
				for (const [name, value] of Object.entries(numbers))
					expect(Math.abs(value - expected[name]!), `${key} ${name}`).toBeLessThan(LAPSES_BEYOND * Math.abs(expected[name]!) + 1e-9);
			});
		}
	});
});
