/** DOM pointer events to inputs of the state machine. Listeners sit on our own element; `stop` removes every one. */
import type { Device, Keys, PointerInput } from './pointer.ts';
import { createWheel, type WheelMeaning } from './wheel.ts';
import type { Point } from '#core/geometry';

export interface Listeners {
	input(input: PointerInput): void;
	wheel(at: Point, meaning: WheelMeaning): void;
	/** Escape was pressed. True when it ended a gesture: then it means nothing else. */
	escape(): boolean;
}

export function listen(container: HTMLElement, { input, wheel, escape }: Listeners): () => void {
	const abort = new AbortController();
	const { signal } = abort;
	const meaningOf = createWheel();
	let space = false;

	const pointOf = (event: { clientX: number; clientY: number }): Point => {
		const { left, top } = container.getBoundingClientRect();
		return { x: event.clientX - left, y: event.clientY - top };
	};
	const keysOf = (event: PointerEvent): Keys => ({ shift: event.shiftKey, alt: event.altKey, ctrl: event.ctrlKey || event.metaKey });
	const common = (event: PointerEvent) => ({
		id: event.pointerId,
		at: pointOf(event),
		keys: keysOf(event),
		device: (event.pointerType === 'touch' || event.pointerType === 'pen' ? event.pointerType : 'mouse') as Device,
		timeMs: event.timeStamp
	});

	container.addEventListener(
		'pointerdown',
		(event) => {
			if (event.button === 1) event.preventDefault(); // or the browser starts its own scrolling
			container.setPointerCapture(event.pointerId);
			input({ kind: 'down', button: event.button, space, ...common(event) });
		},
		{ signal }
	);
	container.addEventListener('pointermove', (event) => input({ kind: 'move', ...common(event) }), { signal });
	container.addEventListener('pointerup', (event) => input({ kind: 'up', ...common(event) }), { signal });
	container.addEventListener('pointercancel', (event) => input({ kind: 'lost', id: event.pointerId }), { signal });
	container.addEventListener('pointerleave', () => input({ kind: 'leave' }), { signal });
	container.addEventListener('contextmenu', (event) => event.preventDefault(), { signal });
	container.addEventListener(
		'wheel',
		(event) => {
			// Otherwise the browser zooms the page or goes back a page.
			event.preventDefault();
			const { deltaX, deltaY, deltaMode, ctrlKey, metaKey, shiftKey, timeStamp } = event;
			wheel(pointOf(event), meaningOf({ deltaX, deltaY, deltaMode, ctrlKey, metaKey, shiftKey, timeMs: timeStamp }));
		},
		{ signal, passive: false }
	);

	window.addEventListener(
		'keydown',
		(event) => {
			if (event.key === 'Escape' && escape()) {
				event.preventDefault();
				event.stopImmediatePropagation();
			}
			if (event.key === ' ' && !typesText(event.target)) space = true;
		},
		{ signal, capture: true }
	);
	window.addEventListener('keyup', (event) => event.key === ' ' && (space = false), { signal, capture: true });
	window.addEventListener('blur', () => (space = false), { signal });
	return () => abort.abort();
}

/** In a control, space types a space or presses a button. */
const typesText = (target: EventTarget | null): boolean =>
	target instanceof Element &&
	target.closest('input, textarea, select, button, [contenteditable], [role="option"], [role="treeitem"]') !== null;
