/** Two points whose distance is known: the first click marks one end, the second the other; or a drag marks both. */
import type { Point } from '#core/geometry';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk } from './tool.ts';

export function createScaleTool(desk: Desk): CanvasTool {
	let first: Point | null = null;
	const clear = (): void => {
		first = null;
		desk.lay({ band: null });
	};
	const finish = (from: Point, to: Point): void => {
		const { tool } = desk.model;
		clear();
		if (tool.kind === 'scale' && (from.x !== to.x || from.y !== to.y)) desk.host.measured?.(tool.underlay, from, to);
	};
	return {
		hover(press) {
			desk.cursor('crosshair');
			if (first) desk.lay({ band: { points: [first, toDrawing(desk.view, press.at)], lands: true } });
		},
		tap(press) {
			const at = toDrawing(desk.view, press.at);
			if (first) return finish(first, at);
			first = at;
		},
		drag(from) {
			const start = toDrawing(desk.view, from.at);
			return {
				move: (press) => desk.lay({ band: { points: [start, toDrawing(desk.view, press.at)], lands: true } }),
				end: (press) => finish(start, toDrawing(desk.view, press.at)),
				cancel: clear
			};
		},
		escape() {
			if (first) clear();
			else desk.host.setTool({ kind: 'select' });
		},
		leave: clear
	};
}
