import {
	addPart,
	compose,
	freshId,
	itemKey,
	mountBlock,
	nextLabel,
	type Command,
	type Diagram,
	type ItemKey,
	type Part,
	type TerminalRef
} from '#core/diagram';
import type { Point } from '#core/geometry';
import { definitionOf, newParams } from '#core/parts';
import { bodiesIn, bodyOf, shiftToFree } from './free-place.ts';

/** Drawing grid: parts are placed on it. */
export const GRID_MM = 5;

const onGrid = (mm: number): number => Math.round(mm / GRID_MM) * GRID_MM;

/** Between bodies that were not placed by hand to the millimetre. */
const CLEAR_MM = 10;

export interface NewPart {
	readonly command: Command;
	readonly key: ItemKey;
}

/**
 * A part of a kind from the library, designated by its class letter and the next free number; beside
 * what is there already, or on a stud.
 *
 * @param on stud of another part, for a fuse block that is mounted in the same step
 */
export function newPart(
	diagram: Diagram,
	partKind: string,
	at: Point,
	on?: TerminalRef,
	params: Part['params'] = newParams(partKind)
): NewPart {
	const definition = definitionOf(partKind);
	if (!definition) throw new RangeError(`There is no part of kind "${partKind}" in the library.`);
	const letter = definition.called?.(definition.params.parse(params)).letter ?? definition.letter;
	const label = nextLabel(diagram, letter);
	const id = Object.hasOwn(diagram.parts, label) ? freshId(diagram.parts, letter) : label;
	const part: Part = {
		kind: partKind,
		label,
		at: { x: onGrid(at.x), y: onGrid(at.y) },
		rotation: 0,
		params,
		note: ''
	};
	const key = itemKey('part', id);
	if (on) {
		const add = addPart({ id, part });
		return { command: compose(add.label, [add, mountBlock({ block: id, on })]), key };
	}
	const by = shiftToFree([bodyOf(part)], bodiesIn(diagram), CLEAR_MM);
	return { command: addPart({ id, part: { ...part, at: { x: part.at.x + by.x, y: part.at.y + by.y } } }), key };
}
