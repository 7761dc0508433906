/** Compares every published value with what the program gives for it, and counts them. */
import { describe, expect, test } from 'vitest';
import type { PublishedTable } from '../../support/published.ts';
import { ABYC, PRINTED_THICKER, PRINTED_THINNER } from './abyc-e11.ts';
import { CIRCUITS } from './circuits.ts';
import { FASTENERS } from './fasteners.ts';
import { IEC } from './iec.ts';
import { NEC } from './nec.ts';
import { SIZING } from './sizing.ts';
import { US_LAW } from './us-law.ts';

const TABLES: readonly PublishedTable[] = [...US_LAW, ...NEC, ...ABYC, ...IEC, ...FASTENERS, ...SIZING, ...CIRCUITS];
const all = TABLES.flatMap((table) => table.values.map((value) => ({ ...table, ...value })));

describe('published values', () => {
	test.each(TABLES.map((table) => [`${table.source}: ${table.clause}`, table] as const))('%s', (_, { values }) => {
		expect(values.length).toBeGreaterThan(0);
		const wrong = values.filter(({ printed, ours, within }) => !(Math.abs(ours - printed) <= within));
		expect(wrong).toEqual([]);
	});

	test('are at least 300 different ones, none counted twice', () => {
		const names = all.map(({ source, clause, what }) => `${source} | ${clause} | ${what}`);
		expect(new Set(names).size).toBe(names.length);
		const by = (way: PublishedTable['way']): number => all.filter((value) => value.way === way).length;
		console.info(
			`${names.length} published values checked: ${by('computed')} computed, ${by('looked up')} looked up, ${TABLES.length} tables.`
		);
		expect(names.length).toBeGreaterThanOrEqual(300);
		expect(by('computed')).toBeGreaterThanOrEqual(150);
	});

	test('are told from wrong ones: a value off by 5 % fails', () => {
		const lenient = all.filter(({ printed, within }) => within > 0 && within >= 0.05 * Math.abs(printed));
		expect(lenient.map(({ source, what }) => `${source}: ${what}`)).toEqual([]);
	});

	test('may differ by more than rounding only for a stated reason', () => {
		const unexplained = all.filter(({ printed, within, because }) => !because && within > 0.011 * Math.abs(printed));
		expect(unexplained.map(({ source, what, within }) => `${source}: ${what} ± ${within}`)).toEqual([]);
	});
});

test('the 3 % table: 93 of 111 cells as printed, 17 printed thicker, one 2.3 % too thin', () => {
	expect(ABYC.find(({ clause }) => clause.startsWith('gauge by length'))!.values).toHaveLength(93);
	expect(PRINTED_THICKER).toHaveLength(17);
	expect(PRINTED_THINNER).toEqual([{ feet: 60, amps: 15, size: '6' }]);
});
