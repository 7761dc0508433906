/** What a refusal or a note calls the things of a diagram. */
import { has } from './ids.ts';
import type { Diagram } from './schema.ts';

export function partName(diagram: Diagram, id: string): string {
	const part = has(diagram.parts, id) ? diagram.parts[id]! : null;
	if (!part) return `"${id}"`;
	return part.label === '' ? `the unlabelled ${part.kind}` : part.label;
}

export function conductorName(diagram: Diagram, id: string): string {
	const conductor = has(diagram.conductors, id) ? diagram.conductors[id]! : null;
	if (!conductor) return `"${id}"`;
	if (conductor.label !== '') return conductor.label;
	return `the unlabelled conductor from ${partName(diagram, conductor.from.part)} to ${partName(diagram, conductor.to.part)}`;
}

/** Of an area that is there. */
export const areaName = ({ areas }: Diagram, id: string): string => areas[id]!.label || 'the area';

/** "1 part", "3 parts". */
export const count = (number: number, noun: string): string => `${number} ${noun}${number === 1 ? '' : 's'}`;

/** Why a part cannot be found, or null when it is there. */
export const missingPart = (diagram: Diagram, id: string): string | null =>
	has(diagram.parts, id) ? null : `There is no part "${id}" in this diagram; it may have been deleted.`;

export const missingConductor = (diagram: Diagram, id: string): string | null =>
	has(diagram.conductors, id) ? null : `There is no conductor "${id}" in this diagram; it may have been deleted.`;

const missingFrame =
	(record: 'areas' | 'notes' | 'underlays', noun: string) =>
	(diagram: Diagram, id: string): string | null =>
		has(diagram[record], id) ? null : `There is no such ${noun} in this diagram; it may have been deleted.`;

export const missingArea = missingFrame('areas', 'area');
export const missingNote = missingFrame('notes', 'note');
export const missingUnderlay = missingFrame('underlays', 'picture');

/** Why things that are kept where they are cannot be moved, or null. */
export function lockedReason(names: readonly string[]): string | null {
	if (names.length === 0) return null;
	const [who, is, it] = names.length === 1 ? [names[0]!, 'is', 'it'] : [names.join(', '), 'are', 'them'];
	return `${who.charAt(0).toUpperCase()}${who.slice(1)} ${is} locked. Unlock ${it} first.`;
}

export const lockedParts = (diagram: Diagram, ids: readonly string[]): string | null =>
	lockedReason([...new Set(ids)].filter((id) => diagram.parts[id]?.locked).map((id) => partName(diagram, id)));

export const missingCase = (diagram: Diagram, id: string): string | null =>
	has(diagram.cases, id) ? null : `There is no operating case "${id}" in this diagram; it may have been deleted.`;

/** The first reason of several, or null. */
export function firstReason(reasons: Iterable<string | null>): string | null {
	for (const reason of reasons) if (reason !== null) return reason;
	return null;
}
