import { afterEach, describe, expect, test } from 'vitest';
import { composeScene, sceneComposer } from '#core/drawing';
import { boxContainsBox } from '#core/geometry';
import { boundsOf } from '#core/graphics';
import type { Diagram } from '#core/diagram';
import { PLAIN_READER, printFor } from '#core/units';
import { circuit } from '../../support/circuit.ts';

afterEach(() => printFor(() => PLAIN_READER));

const base = circuit({ E1: ['load', {}, { at: { x: 500, y: 500 } }] }, []);
const area = { label: 'Engine bay', at: { x: 0, y: 0 }, widthMm: 1000, heightMm: 800, spaces: ['engine' as const], ambientC: 60 };
const note = { text: 'Mind the pulley and the belt that runs beside it', at: { x: 900, y: 900 }, widthMm: 120, to: null };
const photo = {
	label: '',
	picture: 'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
	widthPx: 100,
	heightPx: 50,
	at: { x: -900, y: 0 },
	mmPerPx: 4,
	opacity: 1
};
const drawn: Diagram = { ...base, areas: { A1: area }, notes: { N1: note }, underlays: { U1: photo } };

const wordsIn = (diagram: Diagram, key: 'area:A1' | 'note:N1') =>
	composeScene(diagram)
		.items.get(key)!
		.labels.flatMap((label) => (label.kind === 'text' ? [label.text] : []));

describe('an area', () => {
	test('lies under the parts, a smaller one over a larger, and a note over all', () => {
		const inner = { ...area, widthMm: 100, heightMm: 100 };
		const { order } = composeScene({ ...drawn, areas: { A2: inner, A1: area } });
		expect(order).toEqual(['underlay:U1', 'area:A1', 'area:A2', 'part:E1', 'note:N1']);
	});

	test('says its name and what it is like there', () => {
		expect(wordsIn(drawn, 'area:A1')).toEqual(['Engine bay', 'engine space, 60 °C']);
	});

	// NIST SP 811: t/°C = (t/°F − 32)/1.8, so that 60 °C are 140 °F.
	test('says it as the reader measures, also to who was shown it otherwise', () => {
		const compose = sceneComposer();
		const words = () =>
			compose(drawn)
				.items.get('area:A1')!
				.labels.flatMap((label) => (label.kind === 'text' ? [label.text] : []));
		expect(words()).toContain('engine space, 60 °C');
		printFor(() => ({ ...PLAIN_READER, temperature: '°F' }));
		expect(words()).toContain('engine space, 140 °F');
	});

	test('is nothing that conductors run around', () => {
		expect(composeScene(drawn).items.get('area:A1')).toMatchObject({ body: null, route: null });
	});
});

describe('a note', () => {
	test('breaks its words to its width, and its card holds them', () => {
		const item = composeScene(drawn).items.get('note:N1')!;
		const words = wordsIn(drawn, 'note:N1');
		expect(words.length).toBeGreaterThan(2);
		expect(words.join(' ')).toBe(note.text);
		expect(boxContainsBox(item.frame!, boundsOf(item.labels.filter(({ kind }) => kind === 'text')))).toBe(true);
	});

	test('breaks a word that is longer than the card', () => {
		expect(wordsIn({ ...drawn, notes: { N1: { ...note, text: 'x'.repeat(60) } } }, 'note:N1').join('')).toBe('x'.repeat(60));
	});

	test('leads to the edge of a part, and follows it', () => {
		const led = { ...drawn, notes: { N1: { ...note, to: { kind: 'part' as const, id: 'E1' } } } };
		const before = composeScene(led).items.get('note:N1')!;
		const body = composeScene(led).items.get('part:E1')!.body!;
		const dot = before.primitives.find(({ kind }) => kind === 'circle')!;
		expect(dot.kind === 'circle' && dot.x >= body.minX && dot.x <= body.maxX && dot.y >= body.minY && dot.y <= body.maxY).toBe(true);
		const moved = { ...led, parts: { E1: { ...led.parts['E1']!, at: { x: 100, y: 100 } } } };
		const after = composeScene(moved, {}, composeScene(led)).items.get('note:N1')!;
		expect(after).not.toBe(before);
	});
});

describe('a picture', () => {
	test('has its place, but is no part of what is drawn and printed', () => {
		const scene = composeScene({ ...drawn, areas: {}, notes: {} });
		expect(scene.items.get('underlay:U1')!.frame).toEqual({ minX: -900, minY: 0, maxX: -500, maxY: 200 });
		expect(scene.bounds).toEqual(composeScene(base).bounds);
	});
});

test('a drawing that follows another keeps what did not change', () => {
	const compose = sceneComposer();
	const before = compose(drawn);
	const after = compose({ ...drawn, notes: { N1: { ...note, text: 'Other words' } } });
	expect(after.items.get('area:A1')).toBe(before.items.get('area:A1'));
	expect(after.items.get('note:N1')).not.toBe(before.items.get('note:N1'));
});
