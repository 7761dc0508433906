/** What tools ask about the parts of a diagram. Answers come from the parts' definitions, never from their kind's name. */
import type { Diagram, Part, PartId, TerminalRef } from '#core/diagram';
import { boxCentre, type Point, type Side } from '#core/geometry';
import type { Primitive } from '#core/graphics';
import { partBox, placeBox, placedTerminal, poseOf, terminalPoint } from '#core/layout';
import { drawPart } from '#core/drawing';
import { definitionOf, describe, newParams } from '#core/parts';

export interface StudFacts {
	readonly label: string;
	/** Side a conductor leaves by, on the drawing. */
	readonly side: Side;
	readonly takesLug: boolean;
	readonly takesBlock: boolean;
}

/** Null when there is no such stud. */
export function studFacts(diagram: Diagram, ref: TerminalRef): StudFacts | null {
	const placed = placedTerminal(diagram, ref);
	if (!placed) return null;
	const { terminal, side } = placed;
	const plate = terminal.mountingPlate === true;
	return {
		label: terminal.label,
		side,
		takesLug: !plate,
		takesBlock: !plate && terminal.kind === 'stud' && terminal.acceptsBlock !== false
	};
}

/** The terminal by which a part mounts on another's stud, or null for parts that stand by themselves. */
export function plateOf(diagram: Diagram, id: PartId): string | null {
	const part = diagram.parts[id];
	if (!part) return null;
	const { definition, terminals } = describe(part);
	return definition?.mounts ? (terminals.find((terminal) => terminal.mountingPlate)?.id ?? null) : null;
}

/** Where the plate of a block is; the drawing of a mounted block leaves it out. */
export const platePoint = (diagram: Diagram, plate: TerminalRef): Point | null => terminalPoint(diagram, plate) ?? null;

/** Middle of a part's body as drawn. */
export const bodyCentre = (diagram: Diagram, id: PartId): Point => boxCentre(partBox(diagram, id)!);

/** Where a part is drawn: a mounted block is where its host's stud is, not where its own record says. */
export const partCentre = (diagram: Diagram, id: PartId): Point => poseOf(diagram, id)!.at;

/** Where a block taken off its stud has to be put for its body's centre to come to this point: by itself it may lie turned. */
export function standingAt(diagram: Diagram, id: PartId, centre: Point): Point {
	const part = diagram.parts[id]!;
	const own = boxCentre(placeBox(describe(part).box, { at: { x: 0, y: 0 }, turn: part.rotation }));
	return { x: centre.x - own.x, y: centre.y - own.y };
}

/** A part about to be placed. */
export interface Ghost {
	readonly part: Part;
	/** As it will be drawn, around (0, 0). */
	readonly primitives: readonly Primitive[];
	/** Of a fuse block: where its plate is. */
	readonly plate: Point | null;
}

/** Null for an unknown kind. Parameters are those of a new part, where none are given. */
export function ghostOf(kind: string, params?: Part['params']): Ghost | null {
	const definition = definitionOf(kind);
	if (!definition) return null;
	const at = { x: 0, y: 0 };
	const part: Part = { kind, label: '', at, rotation: 0, params: params ?? newParams(kind), note: '' };
	const plate = definition.mounts ? (describe(part).terminals.find(({ mountingPlate }) => mountingPlate)?.at ?? null) : null;
	return { part, primitives: drawPart('ghost', part, { at, turn: 0 }).primitives, plate };
}
