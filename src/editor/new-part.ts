import { addPart, freshId, itemKey, nextLabel, type Command, type Diagram, type ItemKey } from '#core/diagram';
import type { Point } from '#core/geometry';
import { definitionOf, newParams } from '#core/parts';

/** Drawing grid: parts are placed on it. */
export const GRID_MM = 5;

const onGrid = (mm: number): number => Math.round(mm / GRID_MM) * GRID_MM;

/** A part of a kind from the library with its defaults, designated by its class letter and the next free number. */
export function newPart(diagram: Diagram, partKind: string, at: Point): { readonly command: Command; readonly key: ItemKey } {
	const definition = definitionOf(partKind);
	if (!definition) throw new RangeError(`There is no part of kind "${partKind}" in the library.`);
	const label = nextLabel(diagram, definition.letter);
	const id = Object.hasOwn(diagram.parts, label) ? freshId(diagram.parts, definition.letter) : label;
	const part = { kind: partKind, label, at: { x: onGrid(at.x), y: onGrid(at.y) }, params: newParams(partKind) };
	return { command: addPart({ id, part }), key: itemKey('part', id) };
}
