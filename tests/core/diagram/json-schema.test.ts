import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { diagramJsonSchema, emptyDiagram } from '#core/diagram';

test('the schema the site serves is the one the program reads files by (npm run schema)', () => {
	expect(JSON.parse(readFileSync('static/diagram.schema.json', 'utf8'))).toEqual(diagramJsonSchema());
});

test('it names every field of a diagram and allows no other', () => {
	const schema = diagramJsonSchema() as { properties: object; required: string[]; additionalProperties: boolean };
	expect(Object.keys(schema.properties).sort()).toEqual(Object.keys(emptyDiagram()).sort());
	// What came later than version 1 may be missing from a file.
	const later = ['customProfile', 'waivers', 'revisions', 'remarks', 'readings', 'areas', 'notes', 'underlays'];
	expect([...schema.required, ...later].sort()).toEqual(Object.keys(emptyDiagram()).sort());
	expect(schema.additionalProperties).toBe(false);
});
