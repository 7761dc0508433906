/** Moving the view smoothly, or at once for those who asked for less motion. */
import { between, type View } from './viewport.ts';

const GLIDE_MS = 220;

export interface Glide {
	to(view: View): void;
	/** Where the view is going, or null when it stands still. */
	readonly target: View | null;
	stop(): void;
}

export function createGlide(get: () => View, set: (view: View) => void): Glide {
	let frame = 0;
	let target: View | null = null;
	const calm = window.matchMedia('(prefers-reduced-motion: reduce)');

	function stop(): void {
		cancelAnimationFrame(frame);
		target = null;
	}

	return {
		get target() {
			return target;
		},
		stop,
		to(view) {
			stop();
			if (calm.matches) return set(view);
			const from = get();
			const startMs = performance.now();
			target = view;
			const tick = (nowMs: number): void => {
				const share = Math.min(1, Math.max(0, (nowMs - startMs) / GLIDE_MS));
				if (share === 1) target = null;
				set(share === 1 ? view : between(from, view, 1 - (1 - share) ** 3));
				if (share < 1) frame = requestAnimationFrame(tick);
			};
			frame = requestAnimationFrame(tick);
		}
	};
}
