// @vitest-environment node
import { readFileSync } from 'node:fs';
import Elk, { type ElkNode } from 'elkjs/lib/elk.bundled.js';
import { describe, expect, test } from 'vitest';
import { change, parseDiagram, type Diagram } from '#core/diagram';
import { composeScene } from '#core/drawing';
import { EXAMPLES } from '#core/examples';
import { boxesIntersect, inflateBox } from '#core/geometry';
import { partBox } from '#core/layout';
import { arrangeCommand, arrangeGraph, freeParts } from '#editor';
import { placesIn } from '../../src/editor/elk.ts';

function example(file: string): Diagram {
	const read = parseDiagram(readFileSync(`static/examples/${file}`, 'utf8'));
	if (!read.ok) throw new Error(file);
	return read.diagram;
}

async function arranged(diagram: Diagram): Promise<Diagram> {
	// As the worker is asked, without a worker.
	const graph = JSON.parse(JSON.stringify(arrangeGraph(diagram))) as ElkNode;
	const command = arrangeCommand(diagram, placesIn(await new Elk().layout(graph)));
	if (!command) return diagram;
	expect(command.refuse(diagram)).toBeNull();
	return change(diagram, command).diagram;
}

/** Pairs of parts whose bodies meet, a block and what carries it left out. */
function overlaps(diagram: Diagram): string[] {
	const standing = Object.keys(diagram.parts).filter((id) => !Object.hasOwn(diagram.mounts, id));
	return standing.flatMap((a, i) =>
		standing
			.slice(i + 1)
			.filter((b) => boxesIntersect(inflateBox(partBox(diagram, a)!, -0.1), partBox(diagram, b)!))
			.map((b) => `${a} over ${b}`)
	);
}

describe('arranged', () => {
	test.each(EXAMPLES.filter(({ state }) => state === 'after').map(({ file }) => file))(
		'%s: no part over another, nothing but places changed',
		async (file) => {
			const before = example(file);
			const after = await arranged(before);
			expect(overlaps(after)).toEqual([]);
			expect(after.mounts).toEqual(before.mounts);
			expect(Object.values(after.conductors).map(({ from, to, gauge }) => [from, to, gauge])).toEqual(
				Object.values(before.conductors).map(({ from, to, gauge }) => [from, to, gauge])
			);
			expect(composeScene(after).items.size).toBe(composeScene(before).items.size);
		}
	);

	test('what is locked, grouped or in an area stays, and nothing comes to lie over it', async () => {
		const whole = example('ridge-post-after.json');
		const [first, second, third] = freeParts(whole);
		const body = partBox(whole, third!)!;
		const before: Diagram = {
			...whole,
			parts: {
				...whole.parts,
				[first!]: { ...whole.parts[first!]!, locked: true },
				[second!]: { ...whole.parts[second!]!, group: 'G1' }
			},
			areas: {
				A1: {
					label: 'Bay',
					at: { x: body.minX - 5, y: body.minY - 5 },
					widthMm: body.maxX - body.minX + 10,
					heightMm: body.maxY - body.minY + 10,
					spaces: [],
					ambientC: null
				}
			}
		};
		const after = await arranged(before);
		for (const id of [first!, second!, third!]) expect(after.parts[id]!.at).toEqual(before.parts[id]!.at);
		expect(overlaps(after).filter((pair) => [first, second, third].some((id) => pair.split(' over ').includes(id!)))).toEqual([]);
	});

	test('an empty sheet has nothing to arrange', async () => {
		const whole = example('ridge-post-after.json');
		const empty: Diagram = { ...whole, parts: {}, conductors: {}, mounts: {}, stacks: {} };
		expect(await arranged(empty)).toBe(empty);
	});
});
