import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkDiagram } from '#core/check';
import { serializeDiagram } from '#core/diagram';
import { composeScene } from '#core/drawing';
import { EXAMPLES } from '#core/examples';
import { partBox } from '#core/layout';
import { BUILDERS } from '../../support/examples/all.ts';
import { example } from '../../support/examples/figures.ts';

const FOLDER = 'static/examples';

test('the files, their list and their builders name the same examples', () => {
	const files = readdirSync(FOLDER).filter((name) => name !== 'index.json');
	expect(files.toSorted()).toEqual(EXAMPLES.map(({ file }) => file).toSorted());
	expect(Object.keys(BUILDERS).toSorted()).toEqual(EXAMPLES.map(({ id }) => id).toSorted());
	expect(JSON.parse(readFileSync(`${FOLDER}/index.json`, 'utf8'))).toEqual(EXAMPLES);
});

describe.each(EXAMPLES.map(({ id, state }) => [id, state] as const))('%s', (id, state) => {
	const diagram = example(id);

	test('the file is what its builder makes (npm run examples)', () => {
		expect(readFileSync(`${FOLDER}/${id}.json`, 'utf8')).toBe(serializeDiagram(BUILDERS[id]!()));
	});

	test('parts lie clear of each other', () => {
		const boxes = Object.keys(diagram.parts)
			.filter((part) => !Object.hasOwn(diagram.mounts, part))
			.map((part) => [part, partBox(diagram, part)!] as const);
		const overlapping = boxes.flatMap(([a, p], index) =>
			boxes
				.slice(index + 1)
				.flatMap(([b, q]) => (p.minX < q.maxX && q.minX < p.maxX && p.minY < q.maxY && q.minY < p.maxY ? [`${a} and ${b}`] : []))
		);
		expect(overlapping).toEqual([]);
	});

	test('everything is drawn', () => {
		const { items } = composeScene(diagram);
		expect(items.size).toBe(Object.keys(diagram.parts).length + Object.keys(diagram.conductors).length);
	});

	test('the title block is filled in', () => {
		const { title, supplementaryTitle, craft, identificationNumber, revisionIndex } = diagram.titleBlock;
		for (const field of [title, supplementaryTitle, craft, identificationNumber, revisionIndex]) expect(field).not.toBe('');
	});

	test.runIf(state === 'after')('nothing is left at error level', () => {
		const grave = checkDiagram(diagram).findings.filter(({ severity }) => severity === 'fatal' || severity === 'error');
		expect(grave.map(({ key, message }) => `${key}: ${message}`)).toEqual([]);
	});
});
