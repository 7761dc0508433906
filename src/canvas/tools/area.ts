/** Drawing a rectangle: press at one corner, let go at the other; a click makes one of a usual size. */
import { snapPoint, boxOfPoints, type Box, type Point } from '#core/geometry';
import type { Press } from '../pointer.ts';
import { pitchOf } from '../snapping.ts';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk } from './tool.ts';

const USUAL: Point = { x: 600, y: 400 };
/** A twitch of the hand is no rectangle. */
const LEAST_MM = 20;

export function createAreaTool(desk: Desk): CanvasTool {
	const at = (press: Press): Point => snapPoint(toDrawing(desk.view, press.at), press.keys.alt ? 0 : pitchOf(desk));
	const done = (box: Box): void => {
		desk.lay({ box: null });
		desk.host.drawArea?.(box);
	};
	const usual = (press: Press): void => {
		const { x, y } = at(press);
		done({ minX: x - USUAL.x / 2, minY: y - USUAL.y / 2, maxX: x + USUAL.x / 2, maxY: y + USUAL.y / 2 });
	};
	return {
		hover: () => desk.cursor('crosshair'),
		tap: usual,
		drag(from) {
			const start = at(from);
			const boxTo = (press: Press): Box => boxOfPoints([start, at(press)]);
			return {
				move: (press) => desk.lay({ box: boxTo(press), hover: null }),
				end(press) {
					const box = boxTo(press);
					if (box.maxX - box.minX < LEAST_MM || box.maxY - box.minY < LEAST_MM) usual(press);
					else done(box);
				},
				cancel: () => desk.lay({ box: null })
			};
		},
		escape: () => desk.host.setTool({ kind: 'select' }),
		leave: () => desk.lay({ box: null })
	};
}
