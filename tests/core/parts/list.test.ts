import { readdirSync } from 'node:fs';
import fc from 'fast-check';
import { describe as suite, expect, test } from 'vitest';
import { definitionOf, describe, fieldMeta, newParams, partDefinitions, type Link, type PartDefinition } from '#core/parts';
import type { Param, Part } from '#core/diagram';

const part = (kind: string, params: Record<string, Param> = {}): Part => ({
	kind,
	label: '',
	at: { x: 0, y: 0 },
	rotation: 0,
	params,
	note: ''
});

const endsOf = (link: Link): readonly string[] => ('between' in link ? link.between : [link.positive, link.negative]);

test('every file of kinds/ is on the shelf, and nothing else', () => {
	const files = readdirSync('src/core/parts/kinds').map((name) => name.replace(/\.ts$/, ''));
	expect(partDefinitions.map(({ kind }) => kind).sort()).toEqual(files.sort());
});

test('a kind that does not exist has no definition and no new parameters', () => {
	expect(definitionOf('no-such-kind')).toBeNull();
	expect(definitionOf('constructor')).toBeNull();
	expect(() => newParams('no-such-kind')).toThrow(RangeError);
});

/** What must hold of any part, whatever its parameters. */
function expectSound(definition: PartDefinition, params: Record<string, Param>) {
	const { terminals, links, box, summary, outline } = describe(part(definition.kind, params));
	const ids = terminals.map(({ id }) => id);
	expect(new Set(ids).size).toBe(ids.length);
	expect(new Set(links.map(({ id }) => id)).size).toBe(links.length);
	for (const id of [...ids, ...links.map(({ id }) => id)]) expect(id).toMatch(/^[A-Za-z0-9_-]{1,64}$/);
	for (const link of links) {
		for (const end of endsOf(link)) expect(ids.includes(end) || end.startsWith('@'), `${link.id} ends at ${end}`).toBe(true);
		if ('resistanceOhm' in link) expect(link.resistanceOhm).toBeGreaterThan(0);
		if (link.kind === 'source' && link.fedBy !== null) expect(links.find(({ id }) => id === link.fedBy)?.kind).toBe('load');
		if (link.kind === 'load' && link.followsSource !== null) expect(links.find(({ id }) => id === link.followsSource)?.kind).toBe('source');
	}
	for (const { fuseInStack } of terminals) {
		const fitted = links.find(({ id }) => id === fuseInStack);
		if (fitted) expect(fitted.kind).toBe('protective');
	}
	for (const { id, at } of terminals) {
		expect(at.x >= box.minX && at.x <= box.maxX && at.y >= box.minY && at.y <= box.maxY, `${id} lies on the part`).toBe(true);
	}
	expect(summary).not.toMatch(/NaN|undefined|null/);
	expect(outline().length).toBeGreaterThan(0);
	expect(JSON.stringify(outline())).not.toContain('null');
}

suite.each(partDefinitions.map((definition) => [definition.kind, definition] as const))('%s', (kind, definition) => {
	test('is sound at its defaults', () => expectSound(definition, newParams(kind)));

	test('has a title for every parameter, and defaults that it accepts', () => {
		for (const schema of Object.values(definition.params.shape)) expect(fieldMeta(schema as never).title).not.toBe('');
		expect(definition.params.parse(newParams(kind))).toEqual(newParams(kind));
		expect(describe(part(kind, newParams(kind))).problems).toEqual([]);
	});

	test('is sound with parameters left out', () => expectSound(definition, {}));

	test('is sound whatever its parameters hold', () => {
		const value = fc.oneof(
			fc.double(),
			fc.integer({ min: -5, max: 30 }),
			fc.double({ min: 0.001, max: 5000, noNaN: true }),
			fc.string({ maxLength: 8 }),
			fc.boolean(),
			fc.constant(null),
			fc.array(fc.option(fc.integer({ min: -10, max: 400 })), { maxLength: 30 }),
			fc.constantFrom('M4', 'M12', '1/2', 'studs', 'clamps', 'cube', 'class-t', 'lead-acid', 'north', 'power', 'resistance')
		);
		const params = fc.dictionary(fc.constantFrom(...Object.keys(definition.params.shape), 'unknown'), value, { noNullPrototype: true });
		fc.assert(
			fc.property(params, (given) => {
				expectSound(definition, given as Record<string, Param>);
			}),
			{ numRuns: 60 }
		);
	});
});
