/** Drawing a conductor from stud to stud, or landing an end of one on another stud. */
import {
	itemKey,
	parseItemKey,
	reconnectConductor,
	studKey,
	terminalRef,
	type ConductorEnd,
	type ConductorId,
	type TerminalRef
} from '#core/diagram';
import { distance, type Point, type Side } from '#core/geometry';
import { previewRoute } from '#core/routing';
import { elbow } from '../elbow.ts';
import { standingNear } from '../obstacles.ts';
import { studFacts } from '../parts.ts';
import { partAt, studAt } from '../pick.ts';
import type { Press } from '../pointer.ts';
import type { StudPlace } from '../scene-index.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';

interface Landing {
	readonly at: Point;
	readonly side: Side;
}

/** Width of a conductor whose gauge is not known yet. */
const BAND_MM = 6;

export function dragConductor(desk: Desk, from: TerminalRef): Drag {
	const drag = seekStud(desk, from, (to) => desk.host.connect(from, to));
	desk.cursor('crosshair');
	return drag;
}

/** Takes one end of a conductor to another stud; the rest of it stays where it is landed. */
export function dragEnd(desk: Desk, conductor: ConductorId, end: ConductorEnd): Drag {
	const fixed = desk.model.diagram.conductors[conductor]![end === 'from' ? 'to' : 'from'];
	const current = desk.model.diagram.conductors[conductor]![end];
	desk.cursor('crosshair');
	return seekStud(desk, fixed, (to) => {
		if (to.part !== current.part || to.terminal !== current.terminal) desk.host.run(reconnectConductor({ conductor, end, on: to }));
	});
}

function seekStud(desk: Desk, from: TerminalRef, land: (to: TerminalRef) => void): Drag {
	let target: StudPlace | null = null;
	const leave = (): void => desk.lay({ band: null, seeks: null, target: null, tag: null });
	desk.lay({ seeks: { what: 'lug', except: from }, hover: null });
	return {
		move(press) {
			target = lugStudAt(desk, press, from);
			showBand(desk, from, press, target);
		},
		end() {
			leave();
			if (target) land(terminalRef(parseItemKey(target.key).id));
		},
		cancel: leave
	};
}

/** The stud a conductor would land on: the one under the pointer, or the nearest of the part under it. */
export function lugStudAt(desk: Desk, press: Press, except: TerminalRef | null): StudPlace | null {
	const accepts = ({ key }: StudPlace): boolean => {
		const { id } = parseItemKey(key);
		return (except === null || id !== studKey(except)) && (studFacts(desk.model.diagram, terminalRef(id))?.takesLug ?? false);
	};
	const under = studAt(desk, press.at, press.device, 0, accepts);
	if (under) return under;
	const at = toDrawing(desk.view, press.at);
	const part = partAt(desk.index, at);
	const studs = (part && desk.index.scene.items.get(part)?.terminals) ?? [];
	let nearest: StudPlace | null = null;
	for (const { key } of studs) {
		const stud = desk.index.stud(key)!;
		if (accepts(stud) && (nearest === null || distance(stud.at, at) < distance(nearest.at, at))) nearest = stud;
	}
	return nearest;
}

/** Shows the rubber band from a stud to the pointer, or to the stud it would land on. */
export function showBand(desk: Desk, from: TerminalRef, press: Press, target: StudPlace | null): void {
	const start = placeOf(desk, from);
	if (!start) return;
	const pointer = toDrawing(desk.view, press.at);
	const end = target ? placeOf(desk, terminalRef(parseItemKey(target.key).id)) : null;
	desk.lay({
		band: { points: end ? routeBetween(desk, start, end) : elbow(start.at, start.side, pointer), lands: end !== null },
		target: target?.key ?? null,
		tag: target ? { at: target.at, text: studName(desk, target), tone: 'good' } : null
	});
}

/** On a stud, the band shows the way the conductor will take. */
function routeBetween(desk: Desk, from: Landing, to: Landing): readonly Point[] {
	return previewRoute({ id: '', from, to, bends: null, widthMm: BAND_MM }, standingNear({ from, to }, desk.index));
}

/** "B1 +": part's designation and the stud's own name. */
export function studName(desk: Desk, stud: StudPlace): string {
	const ref = terminalRef(parseItemKey(stud.key).id);
	return `${desk.model.diagram.parts[ref.part]?.label ?? ''} ${studFacts(desk.model.diagram, ref)?.label ?? ref.terminal}`.trim();
}

function placeOf(desk: Desk, ref: TerminalRef): Landing | null {
	const stud = desk.index.stud(itemKey('stud', studKey(ref)));
	const facts = studFacts(desk.model.diagram, ref);
	return stud && facts && { at: stud.at, side: facts.side };
}
