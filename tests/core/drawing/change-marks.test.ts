import { describe, expect, test } from 'vitest';
import { addConductor, change, contentOf, moveParts, removeItems, setParams, type Command } from '#core/diagram';
import { changeMarks, composeScene, withDrawnOver } from '#core/drawing';
import { compareContents, drawnChanges } from '#core/revisions';
import { circuit } from '../../support/circuit.ts';

const before = circuit(
	{
		b: ['battery', { capacityAh: 100 }, { label: 'B1', at: { x: 0, y: 0 } }],
		f: ['inline-fuse', { fuseA: 100 }, { label: 'F3', at: { x: 600, y: 0 } }],
		l: ['load', { draw: 5 }, { label: 'L1', at: { x: 1200, y: 300 } }]
	},
	[
		['b.pos', 'f.in', { label: 'W1' }],
		['l.neg', 'b.neg', { label: 'W2' }]
	]
);

function drawn(...commands: Command[]) {
	const after = commands.reduce((diagram, command) => change(diagram, command).diagram, before);
	const marks = drawnChanges(contentOf(before), compareContents(contentOf(before), contentOf(after)));
	return { marks, primitives: changeMarks(composeScene(after), marks, 10) };
}

describe('what differs, on the drawing', () => {
	test('a changed fuse, a moved load and a new conductor have each their sign and their line', () => {
		const { marks, primitives } = drawn(
			setParams({ parts: ['f'], params: { fuseA: 80 } }),
			moveParts({ parts: ['l'], by: { x: 0, y: 200 } }),
			addConductor({ id: 'W3', conductor: { from: { part: 'f', terminal: 'out' }, to: { part: 'l', terminal: 'pos' }, label: 'W3' } })
		);
		expect(marks.marks).toMatchObject({ 'part:f': 'changed', 'part:l': 'moved', 'conductor:W3': 'added' });
		expect(marks.ghosts.map(({ item, sign }) => [item.key, sign])).toEqual([['part:l', 'moved']]);
		// Without colour: dashes differ from sort to sort, and what is new has none.
		const dashes = (stroke: string) => primitives.flatMap((p) => (p.kind === 'rect' && p.stroke === stroke ? [p.dash] : []));
		expect(dashes('warning')).toEqual([[16, 7]]);
		expect(dashes('note')).toEqual([
			[3, 6],
			[3, 6]
		]);
		expect(primitives.some((p) => p.kind === 'polyline' && p.stroke === 'ok' && p.dash?.length === 0)).toBe(true);
	});

	test('what was taken away is a ghost where it was, with a minus', () => {
		const { marks, primitives } = drawn(removeItems({ parts: [], conductors: ['W2'] }));
		expect(marks.marks).not.toHaveProperty('conductor:W2');
		expect(marks.ghosts.map(({ item, sign }) => [item.key, sign])).toEqual([['conductor:W2', 'removed']]);
		const disc = primitives.find((p) => p.kind === 'circle' && p.stroke === 'error');
		expect(disc).toMatchObject({ r: 10, fill: 'ink' });
		// Signs are painted last.
		const signs = primitives.map((p) => p.kind === 'circle' && p.fill === 'ink');
		expect(signs.indexOf(true)).toBeGreaterThan(primitives.findLastIndex((p) => p.kind !== 'text' && (p.dash?.length ?? 0) > 0));
	});

	test('the signs of a stud stand beside it', () => {
		const { marks } = drawn(removeItems({ parts: [], conductors: ['W1'] }));
		expect(marks.marks).toMatchObject({ 'stud:b.pos': 'changed' });
		const scene = composeScene(before);
		const stud = scene.items.get('part:b')!.terminals.find(({ key }) => key === 'stud:b.pos')!;
		const ring = changeMarks(scene, { marks: { 'stud:b.pos': 'changed' }, ghosts: [] }, 10)[0];
		expect(ring).toMatchObject({ kind: 'circle', x: stud.at.x, y: stud.at.y });
	});

	test('no change draws nothing, and a scene takes what is drawn over it', () => {
		expect(drawn().primitives).toEqual([]);
		const scene = composeScene(before);
		const over = withDrawnOver(scene, [], { minX: -1, minY: -1, maxX: 1, maxY: 1 });
		expect(over.order.slice(0, -1)).toEqual(scene.order);
		expect(over.items.get(over.order.at(-1)!)).toBeDefined();
	});
});
