/**
 * Moving parts. A fuse block held over a stud is mounted there, a mounted one pulled off its stud is unmounted:
 * always one command at the end, and the preview shows exactly what that command would do.
 */
import {
	idsByKind,
	itemKey,
	mountBlock,
	moveItems,
	moveParts,
	parseItemKey,
	terminalRef,
	together,
	unmountBlock,
	withBlocks,
	type Command,
	type ItemKey,
	type PartId
} from '#core/diagram';
import { EMPTY_BOX, distance, snapPoint, unionBoxes, type Box, type Point } from '#core/geometry';
import { partBox } from '#core/layout';
import type { Press } from '../pointer.ts';
import { isFarOut } from '../pick.ts';
import type { StudPlace } from '../scene-index.ts';
import { bodyCentre, partCentre, plateOf, platePoint, standingAt } from '../parts.ts';
import { mountsText, seatFor } from '../seat.ts';
import { pitchOf, snapMoved, tiesOf } from '../snapping.ts';
import { FAR_DRAG_PX } from '../theme.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';

/**
 * @param beside areas, notes and pictures that go along
 * @param lead The part that was taken hold of: it is the one that falls on the grid.
 */
export function dragParts(desk: Desk, lead: PartId, ids: readonly PartId[], from: Press, beside: readonly ItemKey[] = []): Drag {
	const start = toDrawing(desk.view, from.at);
	const block = ids.length === 1 ? plateOf(desk.model.diagram, lead) : null;
	const plate = block === null ? null : platePoint(desk.model.diagram, { part: lead, terminal: block });
	const carried = withBlocks(desk.model.diagram, ids);
	const body = bodyOf(desk, carried);
	const ties = tiesOf(desk, carried);
	// A block that comes off its stud finds its own place.
	const lines = !Object.hasOwn(desk.model.diagram.mounts, lead);
	let command: Command | null = null;
	// Far out a twitch of the hand is a long way: the part has to be meant.
	let meant = !isFarOut(desk, itemKey('part', lead), from.device);

	function move(press: Press): void {
		meant ||= distance(press.at, from.at) >= FAR_DRAG_PX;
		if (!meant) return;
		const pointer = toDrawing(desk.view, press.at);
		const by = { x: pointer.x - start.x, y: pointer.y - start.y };
		const stud = plate && seatFor(desk, { x: plate.x + by.x, y: plate.y + by.y }, press, lead);
		const fit = stud
			? null
			: snapMoved(desk, { body, point: partCentre(desk.model.diagram, lead), by, without: carried, ties, press, lines });
		command = moved(desk, lead, ids, fit?.by ?? by, stud, beside);
		const refused = desk.preview(command);
		if (refused !== null) command = null;
		desk.lay({
			hover: null,
			target: stud?.key ?? null,
			guides: refused === null && command ? (fit?.guides ?? null) : null,
			tag:
				refused !== null
					? { at: pointer, text: refused, tone: 'bad' }
					: stud
						? { at: stud.at, text: mountsText(desk, stud), tone: 'good' }
						: null
		});
	}

	function leave(): void {
		desk.preview(null);
		desk.lay({ target: null, tag: null, seeks: null, guides: null });
	}

	if (plate) desk.lay({ seeks: { what: 'block', except: { part: lead, terminal: block! } } });
	desk.cursor('grabbing');
	return {
		move,
		end() {
			if (command) desk.host.run(command);
			leave();
		},
		cancel: leave
	};
}

const bodyOf = ({ model: { diagram } }: Desk, ids: Iterable<PartId>): Box =>
	[...ids].reduce((box, id) => unionBoxes(box, partBox(diagram, id) ?? EMPTY_BOX), EMPTY_BOX);

/** Null when nothing would change. */
function moved(
	desk: Desk,
	lead: PartId,
	ids: readonly PartId[],
	by: Point,
	on: StudPlace | null,
	beside: readonly ItemKey[]
): Command | null {
	const { diagram } = desk.model;
	const seat = diagram.mounts[lead];
	if (on) {
		const ref = terminalRef(parseItemKey(on.key).id);
		if (seat && seat.part === ref.part && seat.terminal === ref.terminal) return null;
		return mountBlock({ block: lead, on: ref });
	}

	if (by.x === 0 && by.y === 0) return null;

	// A mounted block follows its host; only where the host stays behind does it come off its stud.
	const carried = new Set(ids);
	const staying = ids.filter(
		(id) =>
			diagram.mounts[id] &&
			!withBlocks(
				diagram,
				ids.filter((other) => other !== id)
			).has(id)
	);
	const free = [...carried].filter((id) => !diagram.mounts[id]);
	const commands: Command[] = staying.map((id) => {
		const centre = bodyCentre(diagram, id);
		return unmountBlock({ block: id, at: snapPoint(standingAt(diagram, id, { x: centre.x + by.x, y: centre.y + by.y }), pitchOf(desk)) });
	});
	if (free.length > 0) commands.unshift(moveParts({ parts: free, by }));
	const frames = moveItems({ ...idsByKind(beside), parts: [] }, by);
	return together(frames ? [...commands, frames] : commands);
}
