import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ruleCatalogue, RULES } from '#core/rules';

const { rules, notImplemented } = ruleCatalogue();

describe('the catalogue of rules', () => {
	test('is what the site serves (npm run rules)', () => {
		expect(JSON.parse(readFileSync('static/rules.json', 'utf8'))).toEqual(ruleCatalogue());
	});

	test('names every rule once, with its grounds', () => {
		expect(rules.map(({ id }) => id)).toEqual(RULES.map(({ meta }) => meta.id));
		for (const { title, why, source } of rules) for (const text of [title, why, source.default]) expect(text.length).toBeGreaterThan(10);
	});

	test('says of each check that is not made why not, and none of them is made after all', () => {
		const titles = new Set(rules.map(({ title }) => title));
		expect(new Set(notImplemented.map(({ title }) => title)).size).toBe(notImplemented.length);
		for (const { title, reason } of notImplemented) {
			expect(titles).not.toContain(title);
			expect(title).toMatch(/^\p{Lu}.*[^.]$/u);
			expect(reason).toMatch(/^[“\p{Lu}].*\.$/u);
			expect(`${title} ${reason}`).not.toMatch(/compliant|certified|approved/i);
		}
	});
});
