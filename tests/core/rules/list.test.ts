import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RULES } from '#core/rules';

const SOURCE = new URL('../../../src/core/rules/', import.meta.url);
const files = readdirSync(SOURCE).filter((name) => name.endsWith('.ts'));
const ruleFiles = files
	.filter((name) => /= defineRule(?:ForEach)?\(/.test(readFileSync(new URL(name, SOURCE), 'utf8')))
	.map((name) => name.replace('.ts', ''));
const tests = readdirSync(new URL('.', import.meta.url)).map((name) => name.replace('.test.ts', ''));
const ids = RULES.map(({ meta }) => meta.id);

describe('the list of rules', () => {
	test('holds every rule of the folder once, under its file’s name', () => {
		expect(ids.toSorted()).toEqual(ruleFiles.toSorted());
		expect(new Set(ids).size).toBe(ids.length);
	});

	test.each(ids)('%s has a test of its own', (id) => {
		expect(tests).toContain(id);
	});

	test('begins with topology, which the other groups rest on', () => {
		const groups = RULES.map(({ meta }) => meta.group);
		expect(groups.lastIndexOf('topology')).toBeLessThan(groups.findIndex((group) => group !== 'topology'));
	});

	test.each(RULES.map((rule) => [rule.meta.id, rule] as const))('%s promises nothing a program cannot promise', (_, { meta }) => {
		for (const text of [meta.title, meta.why, ...Object.values(meta.source)]) expect(text).not.toMatch(/compliant|certified|approved/i);
	});
});
