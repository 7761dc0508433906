/** The stud a fuse block would be mounted on: the one under the pointer, or the one under its plate. */
import { parseItemKey, terminalRef, withBlocks, type PartId } from '#core/diagram';
import { distance, type Point } from '#core/geometry';
import { studFacts } from './parts.ts';
import { studAt } from './pick.ts';
import type { Press } from './pointer.ts';
import type { StudPlace } from './scene-index.ts';
import { PICK_PX } from './theme.ts';
import type { Desk } from './tools/tool.ts';

/** @param block The block itself when it is on the drawing already: it cannot sit on what sits on it. */
export function seatFor(desk: Desk, plate: Point, press: Press, block: PartId | null): StudPlace | null {
	const own = block === null ? null : withBlocks(desk.model.diagram, [block]);
	const accepts = (stud: StudPlace): boolean => {
		const ref = terminalRef(parseItemKey(stud.key).id);
		return !own?.has(ref.part) && (studFacts(desk.model.diagram, ref)?.takesBlock ?? false);
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

export function mountsText(desk: Desk, stud: StudPlace): string {
	const ref = terminalRef(parseItemKey(stud.key).id);
	const facts = studFacts(desk.model.diagram, ref);
	return `mounts here: ${desk.model.diagram.parts[ref.part]!.label} ${facts?.label ?? ''}`.trim();
}
