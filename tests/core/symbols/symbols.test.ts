import { describe as suite, expect, test } from 'vitest';
import type { Part } from '#core/diagram';
import { composeScene } from '#core/drawing';
import { inflateBox, type Point } from '#core/geometry';
import { boundsOf, type Primitive } from '#core/graphics';
import { describe, newParams, ownParams, partDefinitions } from '#core/parts';
import { SYMBOLS } from '#core/symbols';
import { circuit } from '../../support/circuit.ts';

const partOf = (kind: string, params: Part['params'] = {}): Part => ({
	kind,
	label: 'P1',
	at: { x: 0, y: 0 },
	rotation: 0,
	params: { ...newParams(kind), ...params },
	note: ''
});

const own = ownParams.parse({
	name: 'Panel',
	studs: [
		{ id: 'in', name: 'IN', leftMm: 60, topMm: 15 },
		{ id: 'a', name: 'A', leftMm: 30, topMm: 75, side: 'south' },
		{ id: 'b', name: 'B', leftMm: 90, topMm: 75, side: 'south' },
		{ id: 'neg', name: '−', leftMm: 110, topMm: 15 }
	],
	links: [
		{ kind: 'switch', id: 'q', from: 'in', to: '@1' },
		{ kind: 'fuse', id: 'f', from: '@1', to: 'a' },
		{ kind: 'breaker', id: 'g', from: '@1', to: 'b' }
	],
	devices: [{ does: 'load', id: 'd', positive: 'b', negative: 'neg' }]
}) as unknown as Part['params'];

const PARTS: [string, Part][] = [
	...partDefinitions.map(({ kind }): [string, Part] => [kind, partOf(kind)]),
	['fused-bus of twelve', partOf('fused-bus', { positions: 12, fuseA: Array(12).fill(40) })],
	['load on studs', partOf('load', { connection: 'studs' })],
	['isolated converter', partOf('dcdc-converter', { isolated: true })],
	['own part', partOf('own-part', own)]
];

const ends = (primitives: readonly Primitive[]): Point[] =>
	primitives.flatMap((shape) => (shape.kind === 'polyline' && shape.points.length > 1 ? [shape.points[0]!, shape.points.at(-1)!] : []));

suite('symbols', () => {
	test.each(PARTS)('%s: what is inside is led to its terminals, within the outline', (_, part) => {
		const description = describe(part);
		const drawn = SYMBOLS.symbolOf(description);
		const points = drawn.flatMap((shape) => (shape.kind === 'polyline' ? shape.points : []));
		for (const { id, at } of description.terminals) {
			const isUsed = description.links.some((link) => ('between' in link ? link.between : [link.positive, link.negative]).includes(id));
			const isOnLine = points.some((a, i) => i > 0 && isBetween(at, points[i - 1]!, a)) || ends(drawn).some((end) => near(end, at));
			if (isUsed) expect(isOnLine, `${id} is led to`).toBe(true);
		}
		const { minX, minY, maxX, maxY } = boundsOf(drawn.filter(({ kind }) => kind !== 'text'));
		const outer = inflateBox(description.box, 4);
		expect([minX >= outer.minX, minY >= outer.minY, maxX <= outer.maxX, maxY <= outer.maxY]).toEqual([true, true, true, true]);
	});

	test('each kind of link has a symbol of its own', () => {
		const shapes = PARTS.map(([, part]) => JSON.stringify(SYMBOLS.symbolOf(describe(part)).slice(1)));
		expect(new Set(shapes).size).toBe(shapes.length - 1); // of the two positive and negative buses, both are a bar
	});

	test('switching moves no terminal, no conductor and no body', () => {
		const diagram = circuit(
			{ b: ['battery'], f: ['fuse-block'], d: ['fused-bus'], e: ['load'], t: ['dcdc-converter'] },
			[
				['f.post', 'd.L'],
				['d.1', 'e.pos'],
				['e.neg', 'b.neg'],
				['d.2', 't.in-pos']
			],
			{ mounts: { f: 'b.pos' } }
		);
		const outlines = composeScene(diagram);
		const symbols = composeScene(diagram, { symbols: SYMBOLS });
		expect(symbols.order).toEqual(outlines.order);
		for (const [key, item] of outlines.items) {
			const other = symbols.items.get(key)!;
			expect([other.terminals, other.body, other.route, other.widthMm]).toEqual([item.terminals, item.body, item.route, item.widthMm]);
		}
		expect(symbols.items.get('part:e')!.primitives).not.toEqual(outlines.items.get('part:e')!.primitives);
	});

	test('a scene drawn before is drawn anew where it was drawn the other way', () => {
		const diagram = circuit({ e: ['load'] });
		const outlines = composeScene(diagram);
		const symbols = composeScene(diagram, { symbols: SYMBOLS }, outlines);
		expect(symbols).not.toBe(outlines);
		expect(composeScene(diagram, {}, symbols).items.get('part:e')).toEqual(outlines.items.get('part:e'));
	});
});

const near = (a: Point, b: Point): boolean => Math.hypot(a.x - b.x, a.y - b.y) < 1e-6;
const isBetween = (p: Point, a: Point, b: Point): boolean =>
	Math.abs(Math.hypot(p.x - a.x, p.y - a.y) + Math.hypot(b.x - p.x, b.y - p.y) - Math.hypot(b.x - a.x, b.y - a.y)) < 1e-6;
