/** Drawing conductors: press on a stud and drag to another, or click one and then the other. */
import { parseItemKey, terminalRef } from '#core/diagram';
import { dragConductor, lugStudAt, showBand, studName } from '../drags/conductor.ts';
import type { CanvasTool, Desk } from './tool.ts';

export function createConnectTool(desk: Desk): CanvasTool {
	const from = () => (desk.model.tool.kind === 'connect' ? desk.model.tool.from : null);
	const restart = (): void => desk.host.setTool({ kind: 'connect', from: null });
	const leave = (): void => desk.lay({ band: null, seeks: null, target: null, tag: null, hover: null });

	return {
		hover(press) {
			const start = from();
			const target = lugStudAt(desk, press, start);
			desk.cursor('crosshair');
			desk.lay({ seeks: { what: 'lug', except: start }, hover: null });
			if (start) return showBand(desk, start, press, target);
			desk.lay({ band: null, target: target?.key ?? null, tag: target && { at: target.at, text: studName(desk, target), tone: 'plain' } });
		},

		tap(press) {
			const start = from();
			const stud = lugStudAt(desk, press, start);
			if (!stud) {
				if (start) restart();
				return;
			}
			const ref = terminalRef(parseItemKey(stud.key).id);
			leave();
			if (!start) return desk.host.setTool({ kind: 'connect', from: ref });
			desk.host.connect(start, ref);
			restart();
		},

		drag(press) {
			const stud = lugStudAt(desk, press, null);
			return stud && dragConductor(desk, terminalRef(parseItemKey(stud.key).id));
		},

		escape() {
			if (from()) restart();
			else desk.host.setTool({ kind: 'select' });
		},

		leave
	};
}
