/**
 * Moving parts. A fuse block held over a stud is mounted there, a mounted one pulled off its stud is unmounted:
 * always one command at the end, and the preview shows exactly what that command would do.
 */
import {
	compose,
	mountBlock,
	moveParts,
	parseItemKey,
	terminalRef,
	unmountBlock,
	withBlocks,
	type Command,
	type PartId
} from '#core/diagram';
import { distance, snapPoint, type Point } from '#core/geometry';
import type { Press } from '../pointer.ts';
import { studAt } from '../pick.ts';
import type { StudPlace } from '../scene-index.ts';
import { bodyCentre, partCentre, plateOf, platePoint, standingAt, studFacts } from '../parts.ts';
import { GRID_MM, PICK_PX } from '../theme.ts';
import type { Desk, Drag } from '../tools/tool.ts';
import { toDrawing } from '../viewport.ts';

/** @param lead The part that was taken hold of: it is the one that snaps to the grid. */
export function dragParts(desk: Desk, lead: PartId, ids: readonly PartId[], from: Press): Drag {
	const start = toDrawing(desk.view, from.at);
	const block = ids.length === 1 ? plateOf(desk.model.diagram, lead) : null;
	const plate = block === null ? null : platePoint(desk.model.diagram, { part: lead, terminal: block });
	let command: Command | null = null;

	function move(press: Press): void {
		const pointer = toDrawing(desk.view, press.at);
		const by = { x: pointer.x - start.x, y: pointer.y - start.y };
		const stud = plate && hostStud(desk, lead, { x: plate.x + by.x, y: plate.y + by.y }, press);
		command = moved(desk, lead, ids, by, stud);
		const refused = desk.preview(command);
		if (refused !== null) command = null;
		desk.lay({
			hover: null,
			target: stud?.key ?? null,
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
		desk.lay({ target: null, tag: null, seeks: null });
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

/** Null when nothing would change. */
function moved(desk: Desk, lead: PartId, ids: readonly PartId[], by: Point, on: StudPlace | null): Command | null {
	const { diagram } = desk.model;
	const seat = diagram.mounts[lead];
	if (on) {
		const ref = terminalRef(parseItemKey(on.key).id);
		if (seat && seat.part === ref.part && seat.terminal === ref.terminal) return null;
		return mountBlock({ block: lead, on: ref });
	}

	const centre = partCentre(diagram, lead);
	const to = snapPoint({ x: centre.x + by.x, y: centre.y + by.y }, GRID_MM);
	const step = { x: to.x - centre.x, y: to.y - centre.y };
	if (step.x === 0 && step.y === 0) return null;

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
		return unmountBlock({ block: id, at: snapPoint(standingAt(diagram, id, { x: centre.x + by.x, y: centre.y + by.y }), GRID_MM) });
	});
	if (free.length > 0) commands.unshift(moveParts({ parts: free, by: step }));
	return commands.length === 1 ? commands[0]! : compose(commands[0]!.label, commands);
}

function hostStud(desk: Desk, block: PartId, plate: Point, press: Press): StudPlace | null {
	const accepts = (stud: StudPlace): boolean => {
		const ref = terminalRef(parseItemKey(stud.key).id);
		if (withBlocks(desk.model.diagram, [block]).has(ref.part)) return false;
		return studFacts(desk.model.diagram, ref)?.takesBlock ?? false;
	};
	const under = studAt(desk, press.at, press.device, 0, accepts);
	if (under) return under;
	const reach = PICK_PX[press.device] / desk.view.zoom;
	const near = desk.index.studs
		.near(plate, reach + 10)
		.map(({ key }) => desk.index.stud(key)!)
		.filter((stud) => distance(stud.at, plate) <= Math.max(reach, stud.radiusMm * 1.5) && accepts(stud));
	return near[0] ?? null;
}

function mountsText(desk: Desk, stud: StudPlace): string {
	const ref = terminalRef(parseItemKey(stud.key).id);
	const facts = studFacts(desk.model.diagram, ref);
	return `mounts here: ${desk.model.diagram.parts[ref.part]!.label} ${facts?.label ?? ''}`.trim();
}
