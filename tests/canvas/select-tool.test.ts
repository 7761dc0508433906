import { describe, expect, test } from 'vitest';
import type { ItemKey } from '#core/diagram';
import { boxCentre } from '#core/geometry';
import { circuit } from '../support/circuit.ts';
import { finding, hands, type Hands } from './support/hands.ts';

/** A battery, a distribution bus with a fuse block beside it, and a load, far enough apart to be told apart. */
const bench = (options: Parameters<typeof circuit>[2] = {}) =>
	circuit(
		{
			B1: ['battery', {}, { at: { x: 200, y: 600 } }],
			D1: ['fused-bus', {}, { at: { x: 700, y: 200 } }],
			F1: ['fuse-block', {}, { at: { x: 200, y: 100 } }],
			W1: ['load', {}, { at: { x: 1200, y: 600 } }]
		},
		[
			['D1.1', 'W1.pos'],
			['W1.neg', 'B1.neg']
		],
		options
	);
const plus = (at: { x: number; y: number }, x: number, y: number) => ({ x: at.x + x, y: at.y + y });
const bodyCentre = (h: Hands, key: ItemKey) => boxCentre(h.desk.scene.items.get(key)!.body!);

describe('clicking', () => {
	test('a part selects it, empty ground selects nothing', () => {
		const h = hands(bench());
		h.click(h.point('part:B1'));
		expect([...h.selection]).toEqual(['part:B1']);
		h.click({ x: 5, y: 900 });
		expect([...h.selection]).toEqual([]);
	});

	test('shift adds and takes away', () => {
		const h = hands(bench());
		h.click(h.point('part:B1'));
		h.click(h.point('part:W1'), { shift: true });
		expect([...h.selection]).toEqual(['part:B1', 'part:W1']);
		h.click(h.point('part:B1'), { shift: true });
		expect([...h.selection]).toEqual(['part:W1']);
		h.click({ x: 5, y: 900 }, { shift: true });
		expect([...h.selection]).toEqual(['part:W1']);
	});

	test('a stud and a conductor can be selected', () => {
		const h = hands(bench());
		h.click(h.point('stud:D1.2'));
		expect([...h.selection]).toEqual(['stud:D1.2']);
		h.click(plus(h.point('conductor:W2'), 0, 3));
		expect([...h.selection]).toEqual(['conductor:W2']);
	});

	test('a click changes nothing in the diagram and runs no command', () => {
		const h = hands(bench());
		const before = h.diagram;
		h.click(h.point('part:D1'));
		expect(h.diagram).toBe(before);
		expect(h.log).toEqual([]);
	});

	test('a finding mark selects what the finding is about', () => {
		const h = hands(bench(), {
			findings: [
				finding('thin', 'error', [
					{ kind: 'conductor', id: 'W2' },
					{ kind: 'part', id: 'B1' }
				])
			]
		});
		h.click(h.desk.marks[0]!.at);
		expect([...h.selection]).toEqual(['conductor:W2']);
	});

	test('far out, a stud is too small to be meant and the part is taken', () => {
		const h = hands(bench(), { view: { x: 0, y: 0, zoom: 0.1 } });
		h.click(h.point('stud:B1.pos'));
		expect([...h.selection]).toEqual(['part:B1']);
	});
});

describe('dragging a part', () => {
	test('moves it onto the 5 mm grid with one command', () => {
		const h = hands(bench());
		h.drag(h.point('part:B1'), plus(h.point('part:B1'), 63, -41));
		expect(h.diagram.parts['B1']!.at).toEqual({ x: 265, y: 560 });
		expect(h.log).toEqual(['move 1 part']);
		expect([...h.selection]).toEqual(['part:B1']);
	});

	test('moves the whole selection when it belongs to it', () => {
		const h = hands(bench());
		h.set({ selection: new Set<ItemKey>(['part:B1', 'part:W1', 'conductor:W2']) });
		h.set({ aids: { grid: true, guides: false } });
		h.drag(h.point('part:B1'), plus(h.point('part:B1'), 50, 0));
		expect([h.diagram.parts['B1']!.at.x, h.diagram.parts['W1']!.at.x]).toEqual([250, 1250]);
		expect(h.log).toEqual(['move 2 parts']);
	});

	test('previews on the drag layer, attached conductors included, and leaves the diagram alone', () => {
		const h = hands(bench());
		const before = h.diagram;
		const at = h.point('part:W1');
		h.press(at);
		h.move(plus(at, 40, 40));
		expect(h.diagram).toBe(before);
		expect(h.log).toEqual([]);
		expect([...h.desk.dragged!.hidden].sort()).toEqual(['conductor:W1', 'conductor:W2', 'part:W1']);
		expect(bodyCentre(h, 'part:W1')).toEqual({ x: 1200, y: 600 });
		expect(boxCentre(h.desk.dragged!.items.get('part:W1')!.body!)).toEqual({ x: 1240, y: 640 });
		const route = h.desk.dragged!.items.get('conductor:W1')!.route!;
		expect(route.at(-1)).toEqual(h.desk.dragged!.items.get('part:W1')!.terminals.find(({ key }) => key === 'stud:W1.pos')!.at);
	});

	test('the still layer is painted once for a whole drag', () => {
		const h = hands(bench());
		const at = h.point('part:W1');
		h.press(at);
		h.move(plus(at, 20, 0));
		expect(h.repainted()).toContain('still');
		for (let i = 5; i < 40; i++) {
			h.move(plus(at, i * 5, i));
			expect(h.repainted()).not.toContain('still');
		}
	});

	test('escape puts everything back', () => {
		const h = hands(bench());
		const before = h.diagram;
		const at = h.point('part:W1');
		h.press(at);
		h.move(plus(at, 200, 0));
		h.escape();
		h.release(plus(at, 200, 0));
		expect(h.diagram).toBe(before);
		expect(h.desk.dragged).toBeNull();
		expect(h.log).toEqual([]);
	});

	test('a second finger puts everything back and pinches', () => {
		const h = hands(bench());
		const at = h.point('part:W1');
		const finger = { keys: { shift: false, alt: false, ctrl: false }, device: 'touch', timeMs: 0 } as const;
		h.feed({ kind: 'down', id: 7, at, button: 0, space: false, ...finger });
		h.feed({ kind: 'move', id: 7, at: plus(at, 50, 0), ...finger });
		expect(h.desk.dragged).not.toBeNull();
		h.feed({ kind: 'down', id: 8, at: plus(at, 150, 0), button: 0, space: false, ...finger });
		h.feed({ kind: 'move', id: 8, at: plus(at, 250, 0), ...finger });
		expect(h.desk.dragged).toBeNull();
		expect(h.desk.view.zoom).toBeCloseTo(2, 9);
		expect(h.log).toEqual([]);
	});

	test('somebody else changing the diagram cancels it', () => {
		const h = hands(bench());
		const at = h.point('part:W1');
		h.press(at);
		h.move(plus(at, 200, 0));
		h.set({ diagram: { ...h.diagram, parts: { ...h.diagram.parts } } });
		h.release(plus(at, 200, 0));
		expect(h.log).toEqual([]);
		expect(h.desk.dragged).toBeNull();
	});

	test('dragged back to where it was, it runs nothing', () => {
		const h = hands(bench());
		const at = h.point('part:W1');
		h.press(at);
		h.move(plus(at, 100, 0));
		h.move(plus(at, 1, 1));
		h.release(plus(at, 1, 1));
		expect(h.log).toEqual([]);
	});
});

describe('dragging a fuse block', () => {
	/** So far that its plate comes to lie a few millimetres beside the stud. */
	const overStud = (h: Hands, key: ItemKey) => {
		const plate = h.point('stud:F1.plate');
		const stud = h.point(key);
		return plus(bodyCentre(h, 'part:F1'), stud.x - plate.x + 4, stud.y - plate.y - 3);
	};

	test('over a stud says where it would mount, and mounts there in one step', () => {
		const h = hands(bench());
		const from = bodyCentre(h, 'part:F1');
		const to = overStud(h, 'stud:D1.R');
		h.press(from);
		h.move(plus(from, 30, 0));
		h.move(to);
		expect(h.desk.overlay.target).toBe('stud:D1.R');
		expect(h.desk.overlay.tag?.text).toMatch(/^mounts here: D1/);
		h.release(to);
		expect(h.diagram.mounts['F1']).toEqual({ part: 'D1', terminal: 'R' });
		expect(h.log).toEqual(['mount a fuse block on a stud']);
		expect(h.desk.overlay.target).toBeNull();
	});

	test('beside a stud it only moves', () => {
		const h = hands(bench());
		const from = bodyCentre(h, 'part:F1');
		h.drag(from, plus(from, 0, 200));
		expect(h.diagram.mounts).toEqual({});
		expect(h.diagram.parts['F1']!.at).toEqual({ x: 200, y: 300 });
	});

	test('pulled off its stud it stands by itself, in one step', () => {
		const h = hands(bench({ mounts: { F1: 'D1.R' } }));
		const from = bodyCentre(h, 'part:F1');
		h.drag(from, plus(from, 100, -150));
		expect(h.diagram.mounts).toEqual({});
		expect(h.log).toEqual(['take a fuse block off its stud']);
		const centre = bodyCentre(h, 'part:F1');
		expect(Math.abs(centre.x - from.x - 100)).toBeLessThanOrEqual(2.5);
		expect(Math.abs(centre.y - from.y + 150)).toBeLessThanOrEqual(2.5);
	});

	test('pulled a little and let go, it stays mounted', () => {
		const h = hands(bench({ mounts: { F1: 'D1.R' } }));
		const from = bodyCentre(h, 'part:F1');
		h.drag(from, plus(from, 5, 4));
		expect(h.diagram.mounts['F1']).toEqual({ part: 'D1', terminal: 'R' });
		expect(h.log).toEqual([]);
	});

	test('from one stud to another it moves over', () => {
		const h = hands(bench({ mounts: { F1: 'D1.R' } }));
		const from = bodyCentre(h, 'part:F1');
		const right = h.point('stud:D1.R');
		const left = h.point('stud:D1.L');
		h.drag(from, plus(from, left.x - right.x, left.y - right.y));
		expect(h.diagram.mounts['F1']).toEqual({ part: 'D1', terminal: 'L' });
	});

	test('its host moved takes it along, and it stays mounted', () => {
		const h = hands(bench({ mounts: { F1: 'D1.R' } }));
		const before = bodyCentre(h, 'part:F1');
		h.set({ selection: new Set<ItemKey>(['part:F1', 'part:D1']) });
		// The body's upper left corner, where neither studs nor the block are.
		const body = h.desk.scene.items.get('part:D1')!.body!;
		const corner = { x: body.minX + 4, y: body.minY + 4 };
		h.drag(corner, plus(corner, 60, 40));
		expect(h.diagram.mounts['F1']).toEqual({ part: 'D1', terminal: 'R' });
		expect(bodyCentre(h, 'part:F1')).toEqual({ x: before.x + 60, y: before.y + 40 });
	});
});

describe('dragging from a stud', () => {
	test('to another stud asks for a conductor', () => {
		const h = hands(bench());
		h.drag(h.point('stud:B1.pos'), h.point('stud:D1.L'));
		expect(h.log).toEqual(['connect B1.pos D1.L']);
	});

	test('snaps to the stud and shows the way the conductor will take, orthogonally', () => {
		const h = hands(bench());
		h.press(h.point('stud:B1.pos'));
		h.move({ x: 400, y: 300 });
		expect(h.desk.overlay.band?.lands).toBe(false);
		h.move(plus(h.point('stud:D1.L'), 3, 2));
		const { band, target } = h.desk.overlay;
		expect(target).toBe('stud:D1.L');
		expect(band?.lands).toBe(true);
		expect(band!.points[0]).toEqual(h.point('stud:B1.pos'));
		expect(band!.points.at(-1)).toEqual(h.point('stud:D1.L'));
		band!.points.slice(1).forEach(({ x, y }, i) => expect(x === band!.points[i]!.x || y === band!.points[i]!.y).toBe(true));
	});

	test('dropped on a part’s body it lands on the nearest stud', () => {
		const h = hands(bench());
		const neg = h.point('stud:B1.neg');
		h.drag(h.point('stud:D1.2'), plus(neg, -25, 40));
		expect(h.log).toEqual(['connect D1.2 B1.neg']);
	});

	test('dropped on empty ground it asks for nothing', () => {
		const h = hands(bench());
		h.drag(h.point('stud:B1.pos'), { x: 20, y: 900 });
		expect(h.log).toEqual([]);
		expect(h.desk.overlay.band).toBeNull();
	});

	test('the plate of a block takes no lug: neither from there nor to there', () => {
		const h = hands(bench());
		h.drag(h.point('stud:F1.plate'), { x: 300, y: 350 });
		expect(h.log).toEqual(['move 1 part']);
		h.log.length = 0;
		h.drag(h.point('stud:B1.pos'), h.point('stud:F1.plate'));
		expect(h.log).toEqual(['connect B1.pos F1.post']);
	});
});

describe('dragging a conductor', () => {
	test('by the handle at its end lands it on another stud', () => {
		const h = hands(bench());
		h.set({ selection: new Set<ItemKey>(['conductor:W1']) });
		const route = h.desk.scene.items.get('conductor:W1')!.route!;
		const to = route.at(-1)!;
		const before = route.at(-2)!;
		const length = Math.hypot(to.x - before.x, to.y - before.y);
		const share = 24 / length;
		const handle = { x: to.x + (before.x - to.x) * share, y: to.y + (before.y - to.y) * share };
		h.drag(handle, h.point('stud:B1.pos'));
		expect(h.log).toEqual(['move a conductor to another stud']);
		expect(h.diagram.conductors['W1']!.to).toEqual({ part: 'B1', terminal: 'pos' });
	});

	test('by a straight piece pushes that piece sideways, onto the grid', () => {
		const h = hands(bench());
		const route = h.desk.scene.items.get('conductor:W2')!.route!;
		// The longest level piece.
		const pieces = route.slice(1).map((b, i) => ({ a: route[i]!, b, length: Math.abs(b.x - route[i]!.x) }));
		const { a, b } = pieces.sort((p, q) => q.length - p.length)[0]!;
		const middle = { x: (a.x + b.x) / 2, y: a.y };
		h.drag(middle, plus(middle, 0, 83));
		const moved = Math.round((a.y + 83) / 5) * 5;
		expect(h.log).toEqual(['route a conductor by hand']);
		expect(h.diagram.conductors['W2']!.bends!.some(({ y }) => y === moved)).toBe(true);
		const after = h.desk.scene.items.get('conductor:W2')!.route!;
		expect(after.slice(1).some((q, i) => q.y === moved && after[i]!.y === moved && Math.abs(q.x - after[i]!.x) > 100)).toBe(true);
	});
});

test('a box selects what lies wholly inside it', () => {
	const h = hands(bench());
	h.drag({ x: 20, y: 20 }, { x: 1000, y: 420 });
	expect([...h.selection].sort()).toEqual(['part:D1', 'part:F1']);
	h.drag({ x: 20, y: 420 }, { x: 500, y: 800 }, { shift: true });
	expect([...h.selection].sort()).toEqual(['part:B1', 'part:D1', 'part:F1']);
});

test('hovering a stud says its name', () => {
	const h = hands(bench());
	h.move(h.point('stud:B1.pos'));
	expect(h.desk.overlay.tag?.text).toBe('B1 +');
	expect(h.desk.overlay.hover).toBe('stud:B1.pos');
	h.feed({ kind: 'leave' });
	expect(h.desk.overlay).toMatchObject({ tag: null, hover: null });
});

test('right click opens the menu for what is under the pointer', () => {
	const h = hands(bench());
	const at = h.point('part:W1');
	const mouse = { id: 1, at, keys: { shift: false, alt: false, ctrl: false }, device: 'mouse', timeMs: 0 } as const;
	h.feed({ kind: 'down', button: 2, space: false, ...mouse });
	h.feed({ kind: 'up', ...mouse });
	expect(h.log).toEqual(['menu part:W1']);
});

test('hovering a mark says what the rule asks for, and how many more there are', () => {
	const findings = [finding('first', 'error', [{ kind: 'part', id: 'B1' }]), finding('second', 'note', [{ kind: 'part', id: 'B1' }])];
	const h = hands(bench(), { findings });
	h.move(h.desk.marks[0]!.at);
	expect(h.desk.overlay.tag).toMatchObject({ text: 'first (and 1 more)', tone: 'bad' });
});

describe('what a drag from a stud means', () => {
	test('the post of a loose fuse block moves the block, unless the post was selected', () => {
		const h = hands(bench());
		const post = h.point('stud:F1.post');
		h.drag(post, plus(post, 100, 50));
		expect(h.log).toEqual(['move 1 part']);
		h.click(h.point('stud:F1.post'));
		h.drag(h.point('stud:F1.post'), h.point('stud:W1.pos'));
		expect(h.log).toEqual(['move 1 part', 'connect F1.post W1.pos']);
	});

	test('the post of a mounted one starts a conductor', () => {
		const h = hands(bench());
		h.drag(h.point('part:F1'), h.point('stud:D1.R'));
		h.drag(h.point('stud:F1.post'), h.point('stud:W1.pos'));
		expect(h.log.at(-1)).toBe('connect F1.post W1.pos');
	});

	test('far out, a drag from a small stud neither moves its part nor draws, and says what would', () => {
		const h = hands(bench(), { view: { x: 0, y: 0, zoom: 0.15 } });
		const before = h.diagram;
		h.drag(h.point('stud:B1.pos'), plus(h.point('stud:B1.pos'), 40, 0));
		expect(h.diagram).toBe(before);
		expect(h.log).toEqual([expect.stringContaining('Zoom in, or use Connect')]);
		h.click(h.point('part:B1'));
		h.drag(h.point('stud:B1.pos'), plus(h.point('stud:B1.pos'), 40, 0));
		expect(h.log.at(-1)).toBe('move 1 part');
	});

	test('far out, a part does not move by a twitch', () => {
		const h = hands(bench(), { view: { x: 0, y: 0, zoom: 0.15 } });
		const before = h.diagram;
		h.drag(h.point('part:W1'), plus(h.point('part:W1'), 6, 0));
		expect(h.diagram).toBe(before);
		h.drag(h.point('part:W1'), plus(h.point('part:W1'), 20, 0));
		expect(h.log).toEqual(['move 1 part']);
	});
});
