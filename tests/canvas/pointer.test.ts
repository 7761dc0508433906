import { describe, expect, test } from 'vitest';
import fc from 'fast-check';
import { IDLE, step, type Gesture, type PointerInput, type PointerState } from '../../src/canvas/pointer.ts';

/**
 * A story in words: "down 10,10 / move 40,10 / up 40,10", each optionally with a finger ("b: down 5,5"), a device
 * ("touch"), a button ("right", "middle"), keys ("alt", "shift", "space") and a time ("@500").
 */
function tell(story: string, options: { pans?: boolean } = {}): { gestures: string[]; state: PointerState } {
	let state = IDLE;
	const gestures: string[] = [];
	for (const line of story.split('/').map((part) => part.trim())) {
		const next = step(state, inputOf(line), () => options.pans ?? false);
		state = next.state;
		gestures.push(...next.gestures.map(brief));
	}
	return { gestures, state };
}

function inputOf(line: string): PointerInput {
	const words = line.replace(/^(\w):/, '$1 ').split(/\s+/);
	const id = words[0] === 'b' ? 2 : words[0] === 'c' ? 3 : 1;
	const verb = words.find((word) => ['down', 'move', 'up', 'lost', 'leave', 'escape', 'waited'].includes(word))!;
	if (verb === 'leave' || verb === 'escape' || verb === 'waited') return { kind: verb };
	if (verb === 'lost') return { kind: 'lost', id };
	const [x, y] = words
		.find((word) => word.includes(','))!
		.split(',')
		.map(Number);
	const common = {
		id,
		at: { x: x!, y: y! },
		keys: { shift: words.includes('shift'), alt: words.includes('alt'), ctrl: words.includes('ctrl') },
		device: words.includes('touch') ? ('touch' as const) : ('mouse' as const),
		timeMs: Number(words.find((word) => word.startsWith('@'))?.slice(1) ?? 0)
	};
	if (verb === 'down')
		return {
			kind: 'down',
			button: words.includes('right') ? 2 : words.includes('middle') ? 1 : 0,
			space: words.includes('space'),
			...common
		};
	return { kind: verb as 'move' | 'up', ...common };
}

function brief(gesture: Gesture): string {
	const at = 'at' in gesture ? ` ${gesture.at.x},${gesture.at.y}` : '';
	switch (gesture.kind) {
		case 'drag-start':
			return `drag-start ${gesture.from.x},${gesture.from.y}`;
		case 'tap':
			return `tap${gesture.count > 1 ? ` x${gesture.count}` : ''}${at}${gesture.keys.shift ? ' shift' : ''}`;
		case 'pan':
			return `pan ${gesture.dx},${gesture.dy}`;
		case 'pinch':
			return `pinch x${Math.round(gesture.factor * 100) / 100} by ${gesture.dx},${gesture.dy}`;
		default:
			return `${gesture.kind}${at}`;
	}
}

const stories: Record<string, [story: string, gestures: string[], end?: PointerState['kind']]> = {
	'moving without a button hovers': ['move 5,5', ['hover 5,5']],
	'press and release without moving taps where it was pressed': ['down 10,10 / up 12,11', ['tap 10,10']],
	'a shaking hand still taps': ['down 10,10 / move 12,12 / up 12,12', ['tap 10,10']],
	'keys held at the press belong to the tap': ['down 10,10 shift / up 10,10', ['tap 10,10 shift']],
	'two taps close in time and place count two': [
		'down 10,10 @0 / up 10,10 @50 / down 12,10 @150 / up 12,10 @200',
		['tap 10,10', 'tap x2 12,10']
	],
	'two slow taps are two single ones': ['down 10,10 @0 / up 10,10 @50 / down 10,10 @900 / up 10,10 @950', ['tap 10,10', 'tap 10,10']],
	'beyond the threshold a drag starts from where it was pressed': [
		'down 10,10 / move 20,10 / move 30,10 / up 31,10',
		['drag-start 10,10', 'drag-move 20,10', 'drag-move 30,10', 'drag-end 31,10']
	],
	'escape cancels a drag, and the release does nothing more': [
		'down 10,10 / move 30,10 / escape / move 50,10 / up 50,10',
		['drag-start 10,10', 'drag-move 30,10', 'drag-cancel']
	],
	'escape while nothing happens is nobody’s business here': ['escape', []],
	'a pointer taken away by the browser cancels': ['down 10,10 / move 30,10 / lost', ['drag-start 10,10', 'drag-move 30,10', 'drag-cancel']],
	'middle button pans': ['down 0,0 middle / move 10,0 / move 15,5 / up 15,5', ['pan-start', 'pan 10,0', 'pan 5,5', 'pan-end']],
	'space and drag pans': ['down 0,0 space / move 10,0 / up 10,0', ['pan-start', 'pan 10,0', 'pan-end']],
	'alt and drag pans': ['down 0,0 alt / move 10,0 / up 10,0', ['pan-start', 'pan 10,0', 'pan-end']],
	'middle click without moving does nothing': ['down 0,0 middle / up 0,0', []],
	'right click opens the menu on release': ['down 7,8 right / up 7,8', ['menu 7,8']],
	'right button does not drag': ['down 7,8 right / move 90,8 / up 90,8', ['menu 90,8']],
	'a finger needs more room before it drags': [
		'down 10,10 touch / move 16,10 touch / up 16,10 touch',
		['wait', 'stop-waiting', 'tap 10,10']
	],
	'long press opens the menu, and lifting does not tap': ['down 10,10 touch / waited / up 10,10 touch', ['wait', 'menu 10,10']],
	'the timer means nothing once a drag began': [
		'down 10,10 touch / move 40,10 touch / waited / up 40,10 touch',
		['wait', 'stop-waiting', 'drag-start 10,10', 'drag-move 40,10', 'drag-end 40,10']
	],
	'a second finger turns a press into a pinch': [
		'down 0,0 touch / b: down 100,0 touch / b: move 200,0 touch',
		['wait', 'stop-waiting', 'pinch x2 by 50,0'],
		'pinch'
	],
	'a second finger cancels a drag': [
		'down 0,0 touch / move 50,0 touch / b: down 150,0 touch / b: move 100,0 touch',
		['wait', 'stop-waiting', 'drag-start 0,0', 'drag-move 50,0', 'drag-cancel', 'pinch x0.5 by -25,0']
	],
	'a second finger ends a pan': [
		'down 0,0 touch alt / move 50,0 touch / b: down 150,0 touch',
		['wait', 'stop-waiting', 'pan-start', 'pan 50,0', 'pan-end'],
		'pinch'
	],
	'two fingers moving alike pan without zooming': [
		'down 0,0 touch / b: down 100,0 touch / move 10,0 touch / b: move 110,0 touch',
		['wait', 'stop-waiting', 'pinch x0.9 by 5,0', 'pinch x1.11 by 5,0']
	],
	'after a pinch the finger left over neither drags nor taps': [
		'down 0,0 touch / b: down 100,0 touch / b: up 100,0 touch / move 60,0 touch / up 60,0 touch / down 5,5 touch / up 5,5 touch',
		['wait', 'stop-waiting', 'wait', 'stop-waiting', 'tap 5,5']
	],
	'a third finger changes nothing': [
		'down 0,0 touch / b: down 100,0 touch / c: down 50,50 touch / c: move 90,90 touch',
		['wait', 'stop-waiting'],
		'pinch'
	],
	'leaving is told only when nothing is held': [
		'leave / down 0,0 / leave / move 30,0 / leave',
		['leave', 'drag-start 0,0', 'drag-move 30,0'],
		'drag'
	]
};

describe('stories', () => {
	for (const [name, [story, gestures, end]] of Object.entries(stories)) {
		test(name, () => {
			const told = tell(story);
			expect(told.gestures).toEqual(gestures);
			if (end) expect(told.state.kind).toBe(end);
		});
	}
});

test('where the tool has no drag to offer, the view pans', () => {
	expect(tell('down 0,0 / move 10,0 / up 10,0', { pans: true }).gestures).toEqual(['pan-start', 'pan 10,0', 'pan-end']);
});

test('whatever fingers do, every drag and pan that starts is ended once, and lifting all returns to idle', () => {
	const input: fc.Arbitrary<PointerInput> = fc.oneof(
		fc
			.record({
				kind: fc.constantFrom('down', 'move', 'up'),
				id: fc.integer({ min: 1, max: 3 }),
				x: fc.integer({ min: 0, max: 99 }),
				touch: fc.boolean()
			})
			.map(({ kind, id, x, touch }): PointerInput => {
				const common = {
					id,
					at: { x, y: 0 },
					keys: { shift: false, alt: false, ctrl: false },
					device: touch ? 'touch' : 'mouse',
					timeMs: 0
				} as const;
				return kind === 'down' ? { kind, button: 0, space: false, ...common } : { kind: kind as 'move' | 'up', ...common };
			}),
		fc.constantFrom<PointerInput>({ kind: 'escape' }, { kind: 'waited' }, { kind: 'lost', id: 1 }, { kind: 'leave' })
	);
	fc.assert(
		fc.property(fc.array(input, { maxLength: 40 }), fc.boolean(), (inputs, pans) => {
			let state = IDLE;
			let dragging = false;
			let panning = false;
			const lift = [1, 2, 3].map((id): PointerInput => ({ kind: 'lost', id }));
			for (const next of [...inputs, ...lift]) {
				const result = step(state, next, () => pans);
				state = result.state;
				for (const { kind } of result.gestures) {
					if (kind === 'drag-start') expect(dragging || panning).toBe(false);
					if (kind === 'drag-move' || kind === 'drag-end' || kind === 'drag-cancel') expect(dragging).toBe(true);
					if (kind === 'pan' || kind === 'pan-end') expect(panning).toBe(true);
					if (kind === 'pinch' || kind === 'tap' || kind === 'menu') expect(dragging || panning).toBe(false);
					dragging = kind === 'drag-start' || (dragging && kind !== 'drag-end' && kind !== 'drag-cancel');
					panning = kind === 'pan-start' || (panning && kind !== 'pan-end');
				}
			}
			expect({ kind: state.kind, dragging, panning }).toEqual({ kind: 'idle', dragging: false, panning: false });
		}),
		{ numRuns: 300 }
	);
});
