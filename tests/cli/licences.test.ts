/** What is written once by "npm run licences" is what it would write now. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { dependencyTable, withTable } from '../../src/cli/dependencies.ts';
import { packageOf, shippedPackages } from '../../src/cli/shipped.ts';

const AGAIN = 'run "npm run licences"';

test('the licences shown under About are those of the packages that are locked', () => {
	const shown: unknown = JSON.parse(readFileSync('static/licences.json', 'utf8'));
	expect(shown, AGAIN).toEqual(shippedPackages());
});

test('every shipped package states a licence that lets it be shipped with its text', () => {
	for (const { name, licence, text } of shippedPackages()) {
		expect(licence, name).toMatch(/MIT|ISC|BSD|EPL-2\.0|Apache-2\.0|Bitstream Vera/);
		expect(text.length, name).toBeGreaterThan(20);
	}
});

test('DEVELOPERS.md lists every dependency with its reason, licence and size', () => {
	const text = readFileSync('DEVELOPERS.md', 'utf8');
	expect(text, AGAIN).toBe(withTable(text, dependencyTable()));
});

test('every package of the page is imported by it', () => {
	const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as { dependencies: Record<string, string> };
	const sources = readdirSync('src', { recursive: true, encoding: 'utf8' })
		.filter((file) => /\.(ts|svelte)$/.test(file) && !file.startsWith('cli'))
		.map((file) => readFileSync(`src/${file}`, 'utf8'))
		.join('\n');
	for (const name of Object.keys(dependencies)) expect(sources, name).toMatch(new RegExp(`(from |import\\()'${name}['/]`));
});

test('a module is told the package it is from', () => {
	expect(packageOf('/a/node_modules/konva/lib/Node.js')).toBe('konva');
	expect(packageOf('/a/node_modules/@sveltejs/kit/src/x.js')).toBe('@sveltejs/kit');
	expect(packageOf('/a/node_modules/b/node_modules/c/x.js')).toBe('c');
	expect(packageOf('/a/src/ui/x.ts')).toBeNull();
});
