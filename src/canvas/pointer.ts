/**
 * The one pointer state machine: what fingers, mouse and pen do, turned into gestures. It knows nothing of parts
 * or of Konva; what a gesture means is the tool's business.
 *
 * A second pointer always cancels what the first one did and becomes a pinch; after a pinch, nothing counts until
 * every finger is lifted, so that the last one down neither drags nor taps.
 */
import type { Point } from '#core/geometry';

export interface Keys {
	readonly shift: boolean;
	readonly alt: boolean;
	readonly ctrl: boolean;
}

export type Device = 'mouse' | 'touch' | 'pen';

interface At {
	readonly id: number;
	/** From the container's corner, in CSS pixels. */
	readonly at: Point;
	readonly keys: Keys;
	readonly device: Device;
	readonly timeMs: number;
}

export type PointerInput =
	| (At & { readonly kind: 'down'; readonly button: number; readonly space: boolean })
	| (At & { readonly kind: 'move' })
	| (At & { readonly kind: 'up' })
	| { readonly kind: 'lost'; readonly id: number }
	| { readonly kind: 'leave' }
	| { readonly kind: 'escape' }
	/** The timer started by `wait` ran out. */
	| { readonly kind: 'waited' };

export interface Press {
	readonly at: Point;
	readonly keys: Keys;
	readonly device: Device;
}

export type Gesture =
	| ({ readonly kind: 'hover' } & Press)
	| { readonly kind: 'leave' }
	| ({ readonly kind: 'tap'; readonly count: number } & Press)
	| ({ readonly kind: 'drag-start'; readonly from: Point } & Press)
	| ({ readonly kind: 'drag-move' } & Press)
	| ({ readonly kind: 'drag-end' } & Press)
	| { readonly kind: 'drag-cancel' }
	| { readonly kind: 'pan'; readonly dx: number; readonly dy: number }
	| { readonly kind: 'pan-start' }
	| { readonly kind: 'pan-end' }
	| { readonly kind: 'pinch'; readonly about: Point; readonly factor: number; readonly dx: number; readonly dy: number }
	| { readonly kind: 'menu'; readonly at: Point; readonly device: Device }
	/** Start, or stop, the long-press timer. */
	| { readonly kind: 'wait'; readonly ms: number }
	| { readonly kind: 'stop-waiting' };

interface LastTap {
	readonly at: Point;
	readonly timeMs: number;
	readonly count: number;
}

export type PointerState = { readonly lastTap: LastTap | null } & (
	| { readonly kind: 'idle' }
	| { readonly kind: 'press'; readonly id: number; readonly from: Press; readonly pans: boolean; readonly button: number }
	| { readonly kind: 'drag'; readonly id: number; readonly last: Point }
	| { readonly kind: 'pan'; readonly id: number; readonly last: Point }
	| { readonly kind: 'pinch'; readonly fingers: ReadonlyMap<number, Point> }
	| { readonly kind: 'spent'; readonly down: ReadonlySet<number> }
);

export const IDLE: PointerState = { kind: 'idle', lastTap: null };

const DRAG_PX: Record<Device, number> = { mouse: 4, pen: 5, touch: 9 };
const LONG_PRESS_MS = 550;
const DOUBLE_MS = 350;
const DOUBLE_PX = 12;

export interface Step {
	readonly state: PointerState;
	readonly gestures: readonly Gesture[];
}

/**
 * One input at a time. `dragPans` is asked when a press turns into a drag: true pans the view, false hands the
 * drag to the tool.
 */
export function step(state: PointerState, input: PointerInput, dragPans: (press: Press) => boolean): Step {
	const to = (next: DistributiveOmit<PointerState, 'lastTap'>, ...gestures: Gesture[]): Step => ({
		state: { ...next, lastTap: state.lastTap } as PointerState,
		gestures
	});
	const stay: Step = { state, gestures: [] };

	switch (input.kind) {
		case 'down': {
			switch (state.kind) {
				case 'idle': {
					const pans = input.button === 1 || input.space || (input.button === 0 && input.keys.alt);
					const from = pressOf(input);
					const pressed = to({ kind: 'press', id: input.id, from, pans, button: input.button });
					return input.device === 'touch' ? adding(pressed, { kind: 'wait', ms: LONG_PRESS_MS }) : pressed;
				}
				case 'press':
				case 'drag':
				case 'pan': {
					// The other buttons of a mouse that is down already come as moves; a second "down" is a second finger.
					if (input.id === state.id) return stay;
					const first = state.kind === 'press' ? state.from.at : state.last;
					const fingers = new Map([
						[state.id, first],
						[input.id, input.at]
					]);
					return to({ kind: 'pinch', fingers }, ...undoing(state));
				}
				case 'pinch':
					return stay;
				case 'spent':
					return to({ kind: 'spent', down: new Set([...state.down, input.id]) });
			}
			break;
		}
		case 'move': {
			switch (state.kind) {
				case 'idle':
					return input.device === 'touch' ? stay : { state, gestures: [{ kind: 'hover', ...pressOf(input) }] };
				case 'press': {
					if (input.id !== state.id || distance(input.at, state.from.at) < DRAG_PX[state.from.device]) return stay;
					const stop: Gesture[] = state.from.device === 'touch' ? [{ kind: 'stop-waiting' }] : [];
					if (state.button === 2) return stay;
					if (state.pans || dragPans(state.from)) {
						const { x, y } = state.from.at;
						return to(
							{ kind: 'pan', id: state.id, last: input.at },
							...stop,
							{ kind: 'pan-start' },
							{ kind: 'pan', dx: input.at.x - x, dy: input.at.y - y }
						);
					}
					return to(
						{ kind: 'drag', id: state.id, last: input.at },
						...stop,
						{
							kind: 'drag-start',
							from: state.from.at,
							...pressOf(input),
							keys: state.from.keys
						},
						{ kind: 'drag-move', ...pressOf(input) }
					);
				}
				case 'drag':
					if (input.id !== state.id) return stay;
					return to({ kind: 'drag', id: state.id, last: input.at }, { kind: 'drag-move', ...pressOf(input) });
				case 'pan':
					if (input.id !== state.id) return stay;
					return to(
						{ kind: 'pan', id: state.id, last: input.at },
						{ kind: 'pan', dx: input.at.x - state.last.x, dy: input.at.y - state.last.y }
					);
				case 'pinch': {
					const before = state.fingers;
					if (!before.has(input.id)) return stay;
					const fingers = new Map(before).set(input.id, input.at);
					return to({ kind: 'pinch', fingers }, pinchBetween([...before.values()], [...fingers.values()]));
				}
				case 'spent':
					return stay;
			}
			break;
		}
		case 'up':
		case 'lost': {
			switch (state.kind) {
				case 'idle':
					return stay;
				case 'press': {
					if (input.id !== state.id) return stay;
					const stop: Gesture[] = state.from.device === 'touch' ? [{ kind: 'stop-waiting' }] : [];
					if (input.kind === 'lost') return to({ kind: 'idle' }, ...stop);
					if (state.button === 2) return to({ kind: 'idle' }, { kind: 'menu', at: input.at, device: state.from.device });
					if (state.pans) return to({ kind: 'idle' }, ...stop);
					const last = state.lastTap;
					const again = last !== null && input.timeMs - last.timeMs < DOUBLE_MS && distance(last.at, input.at) < DOUBLE_PX;
					const count = again ? last.count + 1 : 1;
					return {
						state: { kind: 'idle', lastTap: { at: input.at, timeMs: input.timeMs, count } },
						gestures: [...stop, { kind: 'tap', count, ...state.from }]
					};
				}
				case 'drag':
					if (input.id !== state.id) return stay;
					return input.kind === 'up'
						? to({ kind: 'idle' }, { kind: 'drag-end', ...pressOf(input) })
						: to({ kind: 'idle' }, { kind: 'drag-cancel' });
				case 'pan':
					return input.id === state.id ? to({ kind: 'idle' }, { kind: 'pan-end' }) : stay;
				case 'pinch': {
					if (!state.fingers.has(input.id)) return stay;
					return to({ kind: 'spent', down: new Set([...state.fingers.keys()].filter((id) => id !== input.id)) });
				}
				case 'spent': {
					const down = new Set([...state.down].filter((id) => id !== input.id));
					return down.size === 0 ? to({ kind: 'idle' }) : to({ kind: 'spent', down });
				}
			}
			break;
		}
		case 'escape':
			return state.kind === 'press' || state.kind === 'drag' || state.kind === 'pan'
				? to({ kind: 'spent', down: new Set([state.id]) }, ...undoing(state))
				: stay;
		case 'waited':
			return state.kind === 'press'
				? to({ kind: 'spent', down: new Set([state.id]) }, { kind: 'menu', at: state.from.at, device: state.from.device })
				: stay;
		case 'leave':
			return state.kind === 'idle' ? { state, gestures: [{ kind: 'leave' }] } : stay;
	}
}

type DistributiveOmit<T, K extends PropertyKey> = T extends unknown ? Omit<T, K> : never;

function undoing(state: PointerState & { kind: 'press' | 'drag' | 'pan' }): Gesture[] {
	if (state.kind === 'drag') return [{ kind: 'drag-cancel' }];
	if (state.kind === 'pan') return [{ kind: 'pan-end' }];
	return state.from.device === 'touch' ? [{ kind: 'stop-waiting' }] : [];
}

/** Two fingers: their middle moves the picture, their distance scales it. */
function pinchBetween(before: readonly Point[], after: readonly Point[]): Gesture {
	const [a, b] = before as [Point, Point];
	const [c, d] = after as [Point, Point];
	const from = middle(a, b);
	const about = middle(c, d);
	// Two fingers on one pixel would make the factor infinite.
	const factor = Math.max(distance(c, d), 8) / Math.max(distance(a, b), 8);
	return { kind: 'pinch', about, factor, dx: about.x - from.x, dy: about.y - from.y };
}

const pressOf = ({ at, keys, device }: At): Press => ({ at, keys, device });
const adding = (step: Step, ...more: Gesture[]): Step => ({ state: step.state, gestures: [...step.gestures, ...more] });
const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
