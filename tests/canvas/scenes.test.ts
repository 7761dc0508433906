import { expect, test } from 'vitest';
import fc from 'fast-check';
import { change, moveParts, setBends, type ItemKey } from '#core/diagram';
import { composeScene } from '#core/drawing';
import { isOrthogonal } from '#core/geometry';
import { SceneIndex } from '../../src/canvas/scene-index.ts';
import { createScenes } from '../../src/canvas/scenes.ts';
import { circuit } from '../support/circuit.ts';

const diagram = circuit(
	{
		B1: ['battery', {}, { at: { x: 0, y: 0 } }],
		D1: ['fused-bus', {}, { at: { x: 600, y: 0 } }],
		F1: ['fuse-block', {}, { at: { x: 0, y: 0 } }],
		W1: ['load', {}, { at: { x: 1200, y: 300 } }],
		W2: ['load', {}, { at: { x: 1200, y: 600 } }]
	},
	[
		['B1.pos', 'F1.post'],
		['D1.1', 'W1.pos'],
		['D1.2', 'W2.pos']
	],
	{ mounts: { F1: 'D1.L' } }
);

function prepared() {
	const scenes = createScenes();
	const index = new SceneIndex();
	index.update(scenes.compose(diagram));
	return { scenes, index };
}

test('moving a part touches it, the blocks on it and the conductors on both, and nothing else', () => {
	const { scenes, index } = prepared();
	const { moved } = scenes.preview(diagram, moveParts({ parts: ['D1'], by: { x: 5, y: 0 } }), index);
	expect([...moved].sort()).toEqual(['conductor:W1', 'conductor:W2', 'conductor:W3', 'part:D1', 'part:F1']);
});

test('routing by hand touches one conductor', () => {
	const { scenes, index } = prepared();
	const { moved } = scenes.preview(diagram, setBends({ conductor: 'W2', bends: [{ x: 900, y: 100 }] }), index);
	expect([...moved]).toEqual(['conductor:W2']);
});

test('a preview shows parts and studs exactly where the command will put them, conductors on their studs', () => {
	const { scenes, index } = prepared();
	const offset = fc.integer({ min: -40, max: 40 }).map((steps) => steps * 5);
	fc.assert(
		fc.property(offset, offset, fc.constantFrom('B1', 'D1', 'W1'), (x, y, part) => {
			fc.pre(x !== 0 || y !== 0);
			const command = moveParts({ parts: [part], by: { x, y } });
			const { scene, moved } = scenes.preview(diagram, command, index);
			const after = composeScene(change(diagram, command).diagram);
			for (const key of moved) {
				const shown = scene.items.get(key)!;
				const real = after.items.get(key)!;
				expect(shown.body).toEqual(real.body);
				expect(shown.terminals).toEqual(real.terminals);
				if (!shown.route) continue;
				expect([shown.route[0], shown.route.at(-1)]).toEqual([real.route![0], real.route!.at(-1)]);
				expect(isOrthogonal(shown.route)).toBe(true);
			}
		}),
		{ numRuns: 40 }
	);
});

test('a preview leaves the still scene and the next one alone', () => {
	const { scenes, index } = prepared();
	const before = index.scene;
	scenes.preview(diagram, moveParts({ parts: ['D1'], by: { x: 200, y: 300 } }), index);
	expect(index.scene).toBe(before);
	const again = scenes.compose(diagram);
	for (const key of before.order) expect(again.items.get(key as ItemKey)).toBe(before.items.get(key));
});
