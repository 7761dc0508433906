/**
 * Mends references to things that are not in the file, so that it opens, and tells what was mended. A conductor's
 * missing end becomes a placeholder part rather than the conductor being dropped: nothing drawn is lost.
 */
import { produce, type Draft } from 'immer';
import { FIRST_CASES } from './empty.ts';
import { copyOf } from './copy.ts';
import { has } from './ids.ts';
import { hostsOf } from './mounts.ts';
import { conductorName, count, partName } from './names.ts';
import type { Diagram, StackItem } from './schema.ts';
import { ENDS, landedByStud, sameItem } from './stack.ts';
import { sameTerminal, terminalRef } from './stud-key.ts';

/** Kind of the placeholder for a part that a file names but does not contain; no definition has it. */
export const PLACEHOLDER_KIND = 'missing-part';

export interface Repaired {
	readonly diagram: Diagram;
	/** One sentence for each thing mended. */
	readonly notes: readonly string[];
}

export function repair(diagram: Diagram): Repaired {
	const notes: string[] = [];
	const repaired = produce(diagram, (draft) => {
		replaceMissingEnds(draft, notes);
		dropBrokenMounts(draft, notes);
		dropStrayItems(draft, notes);
		dropStrayLevels(draft, notes);
		if (Object.keys(draft.cases).length === 0) {
			draft.cases = copyOf(FIRST_CASES);
			notes.push('The file had no operating case; the two usual ones were added.');
		}
		dropStrayReadings(draft, notes);
		dropStrayLeaders(draft, notes);
	});
	return { diagram: repaired, notes };
}

function replaceMissingEnds(draft: Draft<Diagram>, notes: string[]): void {
	for (const [id, conductor] of Object.entries(draft.conductors)) {
		for (const end of ENDS) {
			const missing = conductor[end].part;
			if (has(draft.parts, missing)) continue;
			const other = conductor[end === 'from' ? 'to' : 'from'].part;
			const near = has(draft.parts, other) ? draft.parts[other]!.at : { x: 0, y: 0 };
			draft.parts[missing] = {
				kind: PLACEHOLDER_KIND,
				label: missing,
				at: { x: Math.min(near.x + 150, 1e6), y: near.y },
				rotation: 0,
				params: {},
				note: 'Stands for a part that the file named but did not contain.'
			};
			notes.push(
				`${conductorName(draft, id)} ends on a part "${missing}" that is not in the file. A placeholder was set there; replace it or move the end.`
			);
		}
		if (sameTerminal(conductor.from, conductor.to))
			notes.push(`${conductorName(draft, id)} has both ends on the same stud. Move one end to where it belongs.`);
	}
}

function dropBrokenMounts(draft: Draft<Diagram>, notes: string[]): void {
	for (const [block, host] of Object.entries(draft.mounts)) {
		if (!has(draft.parts, block)) {
			notes.push(`A fuse block "${block}" that is not in the file was said to sit on ${partName(draft, host.part)}; that was left out.`);
			delete draft.mounts[block];
		} else if (!has(draft.parts, host.part)) {
			notes.push(`${partName(draft, block)} sat on a part "${host.part}" that is not in the file; it now stands by itself.`);
			delete draft.mounts[block];
		} else if (host.part === block || hostsOf(draft, host.part).some((id) => id === block)) {
			notes.push(`${partName(draft, block)} sat on itself, directly or over other blocks; it now stands by itself.`);
			delete draft.mounts[block];
		}
	}
}

function dropStrayItems(draft: Draft<Diagram>, notes: string[]): void {
	if (Object.keys(draft.stacks).length === 0) return;
	const byStud = landedByStud(draft);
	for (const [key, stack] of Object.entries(draft.stacks)) {
		const { part, terminal } = terminalRef(key);
		const landed = byStud.get(key) ?? [];
		const belongs = (item: StackItem, index: number) =>
			item.kind === 'lug' || item.kind === 'block'
				? landed.some((other) => sameItem(other, item)) && stack.findIndex((other) => sameItem(other, item)) === index
				: true;
		const kept = has(draft.parts, part) ? stack.filter(belongs) : [];
		const dropped = stack.length - kept.length;
		if (dropped > 0)
			notes.push(`The order on stud ${terminal} of ${partName(draft, part)} named ${count(dropped, 'thing')} not landing there; left out.`);
		if (kept.length === 0) delete draft.stacks[key];
		else if (dropped > 0) draft.stacks[key] = kept;
	}
}

function dropStrayLevels(draft: Draft<Diagram>, notes: string[]): void {
	for (const { label, levels, starting = {} } of Object.values(draft.cases)) {
		for (const id of Object.keys(starting)) {
			if (has(draft.parts, id)) continue;
			delete starting[id];
			notes.push(`The case "${label}" let a part "${id}" start that is not in the file; left out.`);
		}
		for (const id of Object.keys(levels)) {
			if (has(draft.parts, id)) continue;
			delete levels[id];
			notes.push(`The case "${label}" set a level for a part "${id}" that is not in the file; left out.`);
		}
	}
}

function dropStrayReadings(draft: Draft<Diagram>, notes: string[]): void {
	let dropped = 0;
	for (const [id, { case: caseId, at, to }] of Object.entries(draft.readings)) {
		if (has(draft.cases, caseId) && has(draft.parts, at.part) && has(draft.parts, to.part)) continue;
		delete draft.readings[id];
		dropped++;
	}
	if (dropped > 0) notes.push(`${count(dropped, 'reading')} named a part or a case that is not in the file; left out.`);
}

function dropStrayLeaders(draft: Draft<Diagram>, notes: string[]): void {
	let dropped = 0;
	for (const note of Object.values(draft.notes)) {
		if (!note.to || has(note.to.kind === 'part' ? draft.parts : draft.conductors, note.to.id)) continue;
		note.to = null;
		dropped++;
	}
	if (dropped > 0) notes.push(`${count(dropped, 'note')} pointed at something that is not in the file; the leader was left out.`);
}
