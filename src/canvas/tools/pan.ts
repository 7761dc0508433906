/** Moving the view: every drag pans; a click still selects, so that one can look around and read. */
import { createSelectTool } from './select.ts';
import type { CanvasTool, Desk } from './tool.ts';

export function createPanTool(desk: Desk): CanvasTool {
	const select = createSelectTool(desk);
	return {
		hover: () => desk.cursor('grab'),
		tap: select.tap,
		drag: () => null,
		escape: () => desk.host.setTool({ kind: 'select' }),
		leave: () => undefined
	};
}
