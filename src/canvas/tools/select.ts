/** Pointing: click selects, shift adds, dragging moves parts, starts conductors, or selects by a box. */
import { hostsOf, itemKey, parseItemKey, terminalRef, withGroups, type ItemKey } from '#core/diagram';
import { dragBox } from '../drags/box.ts';
import { dragConductor, dragEnd, studName } from '../drags/conductor.ts';
import { dragFrames } from '../drags/frames.ts';
import { dragParts } from '../drags/parts.ts';
import { dragGrip } from '../drags/resize.ts';
import { dragSegment } from '../drags/segment.ts';
import type { Grip } from '../frames.ts';
import { subjectKey, type Mark } from '../marks.ts';
import type { Overlay } from '../overlay.ts';
import { plateOf, studFacts } from '../parts.ts';
import { partAt, pick, studAt, thingAt, type Target } from '../pick.ts';
import type { Press } from '../pointer.ts';
import { STUD_PICK_MIN_PX } from '../theme.ts';
import { toDrawing } from '../viewport.ts';
import type { CanvasTool, Desk, Drag } from './tool.ts';

export function createSelectTool(desk: Desk): CanvasTool {
	return {
		hover(press) {
			const target = pick(desk, press.at, press.device);
			desk.cursor(cursorOver(target));
			desk.lay({ hover: keyOf(target), tag: tagOf(desk, target) });
		},

		tap(press, count) {
			const target = pick(desk, press.at, press.device);
			if (target?.kind === 'mark') return chooseFinding(desk, target.mark);
			if (target?.kind === 'remark') {
				desk.host.select([target.key]);
				return desk.host.openRemarks?.(target.key);
			}
			const key = keyOf(target);
			const adds = press.keys.shift || press.keys.ctrl;
			if (key === null) {
				if (!adds) desk.host.select([]);
				return;
			}
			// A second click at once means the one thing of its group.
			const keys = count > 1 ? [key] : withGroups(desk.model.diagram, [key]);
			if (!adds) return desk.host.select(keys);
			const selection = new Set(desk.selection);
			const isIn = selection.has(key);
			for (const each of keys) {
				if (isIn) selection.delete(each);
				else selection.add(each);
			}
			desk.host.select([...selection]);
		},

		drag(from) {
			const handle = pick(desk, from.at, from.device);
			if (handle?.kind === 'grip') return dragGrip(desk, handle.key, handle.grip);
			if (handle?.kind === 'handle') {
				const conductor = itemKey('conductor', handle.conductor);
				return desk.isLocked?.(conductor) ? refuseLocked(desk) : dragEnd(desk, handle.conductor, handle.end);
			}
			const target = thingAt(desk, from.at, from.device);
			if (target && target.kind !== 'stud' && meansTinyStud(desk, from)) return refuseTinyStud(desk);
			switch (target?.kind) {
				case 'stud':
					return dragFromStud(desk, target, from);
				case 'conductor': {
					const part = landedPart(desk, target.key, from);
					return part ? dragFromPart(desk, part, from) : dragSegment(desk, target.key, target.segment);
				}
				case 'part':
					return dragFromPart(desk, target.key, from);
				case 'frame':
					return dragFrames(desk, target.key, selectedWith(desk, target.key, from), from);
				default:
					// One finger on empty ground moves the view: that is what fingers expect.
					return from.device === 'touch' ? null : dragBox(desk, from);
			}
		},

		escape: () => desk.host.select([]),
		leave: () => desk.lay({ hover: null, tag: null })
	};
}

/** The worst finding of a mark; the next one when the mark is clicked again. */
function chooseFinding({ host, model }: Desk, { findings, selects }: Mark): void {
	const next = findings[(findings.findIndex(({ key }) => key === model.focusedFinding) + 1) % findings.length]!;
	const place = next.subjects[0] && subjectKey(next.subjects[0]);
	host.select(place ? [place] : selects);
	host.focusFinding?.(next.key);
}

/**
 * The plate of a fuse block takes no lug: from there one drags the block. So one does from the post of a block that
 * sits nowhere yet: it is mostly post, and first of all it wants its place. A post that was selected is meant itself.
 */
function dragFromStud(desk: Desk, { key, stud }: Extract<Target, { kind: 'stud' }>, from: Press): Drag {
	const { diagram } = desk.model;
	const ref = terminalRef(parseItemKey(key).id);
	const isLooseBlock = plateOf(diagram, ref.part) !== null && !diagram.mounts[ref.part];
	const means = studFacts(diagram, ref)?.takesLug && (!isLooseBlock || desk.selection.has(key));
	return means ? dragConductor(desk, ref) : dragFromPart(desk, stud.item, from);
}

/**
 * Far out, a drag from a stud that is too small to be aimed at is more likely meant for the stud than for its part.
 * A part that was selected first is meant itself.
 */
function meansTinyStud(desk: Desk, { at, device }: Press): boolean {
	const stud = studAt(desk, at, device);
	return stud !== null && stud.radiusMm * desk.view.zoom < STUD_PICK_MIN_PX[device] && !desk.selection.has(stud.item);
}

function refuseTinyStud(desk: Desk): Drag {
	desk.host.announce('Zoom in, or use Connect, to draw from small terminals. To move a part at this zoom, select it first.');
	return { move: () => undefined, end: () => undefined, cancel: () => undefined };
}

/**
 * The part under the pointer, if this conductor lands on it or on its host: a thick conductor covers a small block almost wholly,
 * and there one means the block. A conductor that was selected first is meant itself.
 */
function landedPart(desk: Desk, conductor: ItemKey, from: Press): ItemKey | null {
	if (desk.selection.has(conductor)) return null;
	const part = partAt(desk.index, toDrawing(desk.view, from.at));
	const ends = desk.model.diagram.conductors[parseItemKey(conductor).id];
	if (part === null || !ends) return null;
	const { id } = parseItemKey(part);
	return [id, ...hostsOf(desk.model.diagram, id)].some((end) => end === ends.from.part || end === ends.to.part) ? part : null;
}

function dragFromPart(desk: Desk, key: ItemKey, from: Press): Drag {
	const lead = parseItemKey(key).id;
	const selected = selectedWith(desk, key, from);
	const parts = selected.filter((other) => parseItemKey(other).kind === 'part' && desk.index.scene.items.has(other));
	const beside = selected.filter((other) => desk.index.scene.items.get(other)?.frame);
	return dragParts(desk, lead, [...new Set([lead, ...parts.map((other) => parseItemKey(other).id)])], from, beside);
}

/** What goes along with the thing that was taken hold of: the selection, if it belongs to it, or else its group. */
function selectedWith(desk: Desk, key: ItemKey, from: Press): readonly ItemKey[] {
	if (!desk.selection.has(key)) {
		const keys = withGroups(desk.model.diagram, [key]);
		desk.host.select(from.keys.shift ? [...desk.selection, ...keys] : keys);
	}
	return desk.selection.has(key) ? [...desk.selection] : [key];
}

function refuseLocked(desk: Desk): Drag {
	desk.host.announce('This conductor is locked. Unlock it first.');
	return { move: () => undefined, end: () => undefined, cancel: () => undefined };
}

function keyOf(target: Target | null): ItemKey | null {
	switch (target?.kind) {
		case 'stud':
		case 'conductor':
		case 'part':
		case 'remark':
		case 'frame':
		case 'grip':
			return target.key;
		case 'mark':
			return target.mark.selects[0] ?? null;
		case 'handle':
			return itemKey('conductor', target.conductor);
		default:
			return null;
	}
}

const resizeCursor = ({ x, y }: Grip) => (x === 0 ? 'ns-resize' : y === 0 ? 'ew-resize' : x === y ? 'nwse-resize' : 'nesw-resize');

function cursorOver(target: Target | null) {
	switch (target?.kind) {
		case 'stud':
			return 'crosshair';
		case 'part':
		case 'frame':
			return 'move';
		case 'grip':
			return resizeCursor(target.grip);
		case 'handle':
			return 'grab';
		case undefined:
			return 'default';
		default:
			return 'pointer';
	}
}

function tagOf(desk: Desk, target: Target | null): Overlay['tag'] {
	if (target?.kind === 'stud') return { at: target.stud.at, text: studName(desk, target.stud), tone: 'plain' };
	if (target?.kind !== 'mark') return null;
	const { at, findings, severity } = target.mark;
	const more = findings.length > 1 ? ` (and ${findings.length - 1} more)` : '';
	const tone = severity === 'fatal' || severity === 'error' ? 'bad' : 'plain';
	return { at: toDrawing(desk.view, at), text: findings[0]!.title + more, tone };
}
