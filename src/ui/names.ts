import { parseItemKey, studKey, terminalRef, type Diagram, type ItemKey, type StudKey, type TerminalRef } from '#core/diagram';
import type { Tool } from '#canvas';
import { definitionOf } from '#core/parts';
import { conductorName, frameName, partName, studName } from '#editor';
import { said } from './language/said.ts';

export function itemName(diagram: Diagram, key: ItemKey): string {
	const { kind, id } = parseItemKey(key);
	if (kind === 'part') return partName(diagram, id);
	if (kind === 'conductor') return conductorName(diagram, id);
	return kind === 'stud' ? studName(diagram, terminalRef(id)) : frameName(diagram, kind, id);
}

/** What the tool in hand would place. */
export function placedName({ partKind, params = {} }: Extract<Tool, { kind: 'place' }>): string {
	const definition = definitionOf(partKind);
	return definition?.called?.(definition.params.parse(params)).name ?? said(definition?.name ?? partKind);
}

export interface Landing {
	/** What a click on it selects. */
	readonly key: ItemKey;
	readonly name: string;
	/** The stud at the conductor's other end; null for a block. */
	readonly other: TerminalRef | null;
}

/** Conductors and blocks on a stud, in the order they were drawn. */
export function landingsOn(diagram: Diagram, key: StudKey): Landing[] {
	const lugs = Object.entries(diagram.conductors).flatMap(([id, { from, to }]): Landing[] => {
		const here = { key: `conductor:${id}` as const, name: conductorName(diagram, id) };
		if (studKey(from) === key) return [{ ...here, other: to }];
		return studKey(to) === key ? [{ ...here, other: from }] : [];
	});
	const blocks = Object.entries(diagram.mounts).flatMap(([block, host]): Landing[] =>
		studKey(host) === key ? [{ key: `part:${block}`, name: partName(diagram, block), other: null }] : []
	);
	return [...lugs, ...blocks];
}
