import { describe, expect, test } from 'vitest';
import { composeScene } from '#core/drawing';
import { placeNames } from '../../src/canvas/names.ts';
import { circuit } from '../support/circuit.ts';

const widthOf = (text: string) => 7 * text.length;
const namesAt = (zoom: number, diagram: ReturnType<typeof circuit>) => placeNames(diagram, composeScene(diagram).items, { zoom, widthOf });

describe('designations far out', () => {
	const apart = circuit({
		B1: ['battery', {}, { at: { x: 0, y: 0 } }],
		F1: ['fuse-block', {}, { at: { x: 1000, y: 0 } }],
		W1: ['load', {}, { at: { x: 2000, y: 0 } }]
	});

	test('close up, parts carry their own', () => {
		expect(namesAt(2, apart).size).toBe(0);
	});

	test('far out, every part that stands alone has one, inside its body or beside it', () => {
		const names = namesAt(0.08, apart);
		expect([...names.values()].map((name) => name?.text)).toEqual(expect.arrayContaining(['B1', 'F1', 'W1']));
	});

	test('where there is room for one, the bus keeps it and the load goes without', () => {
		const crowd: Parameters<typeof circuit>[0] = { D1: ['fused-bus', {}, { at: { x: 500, y: 500 } }] };
		for (let i = 0; i < 30; i++) crowd[`L${i}`] = ['load', {}, { at: { x: 500 + (i % 6) * 10, y: 500 + Math.floor(i / 6) * 10 } }];
		const names = namesAt(0.05, circuit(crowd));
		expect(names.get('part:D1')).not.toBeNull();
		expect([...names.values()].filter((name) => name === null).length).toBeGreaterThan(0);
	});

	test('a long one is shortened', () => {
		const long = circuit({ B1: ['battery', {}, { label: 'Starting battery, port side' }] });
		expect(namesAt(0.05, long).get('part:B1')?.text).toBe('Starting ba…');
	});
});
