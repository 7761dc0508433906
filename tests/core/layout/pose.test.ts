import { describe as suite, expect, test } from 'vitest';
import type { Diagram, Part, Rotation, TerminalRef } from '#core/diagram';
import { partBox, placedTerminal, poseOf, terminalPoint } from '#core/layout';
import { newParams } from '#core/parts';

const part = (kind: string, x: number, y: number, rotation: Rotation = 0): Part => ({
	kind,
	label: '',
	at: { x, y },
	rotation,
	params: newParams(kind),
	note: ''
});

const diagram = (parts: Record<string, Part>, mounts: Record<string, TerminalRef> = {}): Diagram =>
	({ parts, mounts, conductors: {}, stacks: {}, cases: {} }) as unknown as Diagram;

suite('a part on the drawing', () => {
	test('stands where it was put', () => {
		const d = diagram({ S: part('shunt', 100, 50) });
		expect(poseOf(d, 'S')).toEqual({ at: { x: 100, y: 50 }, turn: 0 });
		expect(terminalPoint(d, { part: 'S', terminal: 'system' })).toEqual({ x: 142, y: 50 });
		expect(placedTerminal(d, { part: 'S', terminal: 'system' })?.side).toBe('east');
	});

	test('turns clockwise with its terminals, sides and body', () => {
		const d = diagram({ S: part('shunt', 100, 50, 90) });
		expect(terminalPoint(d, { part: 'S', terminal: 'system' })).toEqual({ x: 100, y: 92 });
		expect(placedTerminal(d, { part: 'S', terminal: 'system' })?.side).toBe('south');
		expect(partBox(d, 'S')).toEqual({ minX: 67, maxX: 125, minY: -12, maxY: 112 });
	});

	test('terminals and parts that do not exist are nowhere', () => {
		const d = diagram({ S: part('shunt', 0, 0), U: { ...part('shunt', 0, 0), kind: 'flux-compensator' } });
		expect(terminalPoint(d, { part: 'S', terminal: 'third' })).toBeUndefined();
		expect(terminalPoint(d, { part: 'U', terminal: 'system' })).toBeUndefined();
		expect(terminalPoint(d, { part: 'toString', terminal: 'system' })).toBeUndefined();
		expect(poseOf(d, 'toString')).toBeUndefined();
	});
});

suite('a fuse block on a stud', () => {
	const onBus = (rotation: Rotation = 0, blockRotation: Rotation = 0) =>
		diagram({ D: part('fused-bus', 500, 300, rotation), F: part('fuse-block', 0, 0, blockRotation) }, { F: { part: 'D', terminal: 'R' } });

	test('has its plate on that stud', () => {
		const d = onBus();
		expect(terminalPoint(d, { part: 'F', terminal: 'plate' })).toEqual(terminalPoint(d, { part: 'D', terminal: 'R' }));
	});

	test('points the way conductors leave that stud', () => {
		const d = onBus();
		const seat = terminalPoint(d, { part: 'D', terminal: 'R' })!;
		const post = terminalPoint(d, { part: 'F', terminal: 'post' })!;
		expect(post.x).toBeGreaterThan(seat.x);
		expect(post.y).toBe(seat.y);
		expect(placedTerminal(d, { part: 'F', terminal: 'post' })?.side).toBe('east');
	});

	test('turns with its host, and by its own rotation', () => {
		expect(poseOf(onBus(90), 'F')!.turn).toBe(0);
		expect(placedTerminal(onBus(90), { part: 'F', terminal: 'post' })?.side).toBe('south');
		expect(placedTerminal(onBus(90, 90), { part: 'F', terminal: 'post' })?.side).toBe('west');
	});

	test('stays where it was put when its host is missing', () => {
		const d = diagram({ F: part('fuse-block', 7, 8) }, { F: { part: 'gone', terminal: 'R' } });
		expect(poseOf(d, 'F')!.at).toEqual({ x: 7, y: 8 });
	});

	test('stays where it was put when blocks are mounted in a ring', () => {
		const d = diagram(
			{ F: part('fuse-block', 1, 0), G: part('fuse-block', 2, 0), H: part('fuse-block', 3, 0) },
			{ F: { part: 'G', terminal: 'post' }, G: { part: 'F', terminal: 'post' }, H: { part: 'G', terminal: 'post' } }
		);
		expect(poseOf(d, 'F')!.at).toEqual({ x: 1, y: 0 });
		expect(poseOf(d, 'G')!.at).toEqual({ x: 2, y: 0 });
		expect(poseOf(d, 'H')).toBeDefined();
	});

	test('a block that stands on a block follows it', () => {
		const d = diagram(
			{ D: part('fused-bus', 500, 300), F: part('fuse-block', 0, 0), G: part('fuse-block', 0, 0) },
			{ F: { part: 'D', terminal: 'R' }, G: { part: 'F', terminal: 'post' } }
		);
		expect(terminalPoint(d, { part: 'G', terminal: 'plate' })).toEqual(terminalPoint(d, { part: 'F', terminal: 'post' }));
	});
});
