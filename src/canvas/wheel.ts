/**
 * What a turn of the wheel means. A mouse wheel and the pinch of a trackpad zoom, two fingers on a trackpad pan.
 * Browsers do not say which device it was: a wheel turns in large whole steps along one axis, a trackpad sends
 * many small ones.
 */
export interface WheelTurn {
	readonly deltaX: number;
	readonly deltaY: number;
	/** 0 pixels, 1 lines, 2 pages (UI Events, WheelEvent.deltaMode). */
	readonly deltaMode: number;
	readonly ctrlKey: boolean;
	readonly metaKey: boolean;
	readonly shiftKey: boolean;
	readonly timeMs: number;
}

export type WheelMeaning =
	{ readonly kind: 'zoom'; readonly factor: number } | { readonly kind: 'pan'; readonly dx: number; readonly dy: number };

const LINE_PX = 16;
const PAGE_PX = 400;
const WHEEL_STEP_PX = 60;
/** A fling on a trackpad also has large steps in the middle: the meaning is kept until the turning pauses. */
const SAME_TURN_MS = 250;
const ZOOM_PER_PX = 0.0016;
/** A pinch arrives as ctrl + wheel with deltas about ten times smaller than those of a wheel. */
const PINCH_PER_PX = 0.01;

export function createWheel(): (turn: WheelTurn) => WheelMeaning {
	let lastMs = -Infinity;
	let stepped = false;

	return (turn) => {
		const unit = turn.deltaMode === 0 ? 1 : turn.deltaMode === 1 ? LINE_PX : PAGE_PX;
		const dx = turn.deltaX * unit;
		const dy = turn.deltaY * unit;
		if (turn.timeMs - lastMs > SAME_TURN_MS) stepped = turn.deltaMode !== 0 || (dx === 0 && Math.abs(dy) >= WHEEL_STEP_PX);
		lastMs = turn.timeMs;

		if (turn.ctrlKey || turn.metaKey) return zoomed(dy, Math.abs(dy) < WHEEL_STEP_PX ? PINCH_PER_PX : ZOOM_PER_PX);
		if (turn.shiftKey) return { kind: 'pan', dx: -(dx || dy), dy: 0 };
		return stepped ? zoomed(dy, ZOOM_PER_PX) : { kind: 'pan', dx: -dx, dy: -dy };
	};
}

/** One notch at most halves or doubles, however fast the wheel was turned. */
function zoomed(dy: number, perPx: number): WheelMeaning {
	return { kind: 'zoom', factor: Math.min(2, Math.max(0.5, Math.exp(-dy * perPx))) };
}
