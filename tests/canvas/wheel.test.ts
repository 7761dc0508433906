import { expect, test } from 'vitest';
import { createWheel, type WheelTurn } from '../../src/canvas/wheel.ts';

const turn = (given: Partial<WheelTurn>): WheelTurn => ({
	deltaX: 0,
	deltaY: 0,
	deltaMode: 0,
	ctrlKey: false,
	metaKey: false,
	shiftKey: false,
	timeMs: 0,
	...given
});

test('a notch of a mouse wheel zooms: towards you is smaller', () => {
	const away = createWheel()(turn({ deltaY: -120 }));
	const towards = createWheel()(turn({ deltaY: 120 }));
	expect(away.kind === 'zoom' && away.factor).toBeCloseTo(1 / (towards.kind === 'zoom' ? towards.factor : NaN), 9);
	expect(away.kind === 'zoom' && away.factor > 1).toBe(true);
});

test('a wheel that counts in lines zooms', () => {
	expect(createWheel()(turn({ deltaY: 3, deltaMode: 1 })).kind).toBe('zoom');
});

test('two fingers on a trackpad pan, against the fingers', () => {
	expect(createWheel()(turn({ deltaX: 3, deltaY: 11 }))).toEqual({ kind: 'pan', dx: -3, dy: -11 });
});

test('a pinch on a trackpad arrives with ctrl and zooms', () => {
	const pinch = createWheel()(turn({ deltaY: -5, ctrlKey: true }));
	expect(pinch.kind === 'zoom' && pinch.factor).toBeCloseTo(Math.exp(0.05), 9);
});

test('shift turns a wheel sideways', () => {
	expect(createWheel()(turn({ deltaY: 100, shiftKey: true }))).toEqual({ kind: 'pan', dx: -100, dy: 0 });
});

test('a fling on a trackpad keeps panning when its steps grow', () => {
	const wheel = createWheel();
	expect(wheel(turn({ deltaY: 8, timeMs: 0 })).kind).toBe('pan');
	expect(wheel(turn({ deltaY: 150, timeMs: 16 })).kind).toBe('pan');
	expect(wheel(turn({ deltaY: 150, timeMs: 2000 })).kind).toBe('zoom');
});

test('one event never more than doubles or halves', () => {
	const wild = createWheel()(turn({ deltaY: -100000 }));
	expect(wild).toEqual({ kind: 'zoom', factor: 2 });
});
