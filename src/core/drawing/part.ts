import { itemKey, studKey, type Part, type PartId } from '#core/diagram';
import { outward, rotateSide, unionBoxes, type Point, type Side } from '#core/geometry';
import { boundsOf, placePrimitives, text, type Primitive } from '#core/graphics';
import { place, placeBox, type Pose } from '#core/layout';
import { describe } from '#core/parts';
import { wordsBeside, wordsInside } from './nameplate.ts';
import { drawTerminal, nut, terminalRadiusMm } from './terminal.ts';
import type { DrawnItem, PartSymbols } from './types.ts';

const PRINT_MM = 6;

/** Inside the part, clear of the line that leads to the terminal. */
function besideLead(words: string, { x, y }: Point, side: Side): Primitive {
	const away = outward(side);
	return text(x - away.x * 6 + 4, y - away.y * 10 - Math.abs(away.x) * 6, words, PRINT_MM, {
		fill: 'muted',
		upright: true,
		align: 'start'
	});
}

export interface PartLooks {
	readonly isMounted?: boolean;
	/** Sides on which something else is drawn, so that its name is not written there; those of its terminals when left out. */
	readonly taken?: ReadonlySet<Side>;
	/** Draws the symbol in place of the outline. */
	readonly symbols?: PartSymbols | null;
}

/**
 * A part as drawn. The plate of a mounted block is left out: its place is its host's stud.
 */
export function drawPart(id: PartId, part: Part, pose: Pose, { isMounted = false, taken, symbols = null }: PartLooks = {}): DrawnItem {
	const description = describe(part);
	const body = placeBox(description.box, pose);
	const terminals = description.terminals
		.filter(({ mountingPlate }) => !(mountingPlate && isMounted))
		.map((terminal) => ({ terminal, at: place(terminal.at, pose), side: rotateSide(terminal.side, pose.turn) }));
	const hosted = isMounted && !symbols ? description.terminals.filter(({ mountingPlate }) => mountingPlate) : [];
	const primitives = [
		...placePrimitives(symbols?.symbolOf(description) ?? description.outline(), pose.at, pose.turn),
		// The nut of the host's stud holds the plate down.
		...hosted.flatMap((plate) => nut(place(plate.at, pose), plate)),
		...(symbols ? [] : terminals.flatMap(({ terminal, at, side }) => drawTerminal(terminal, at, side)))
	];
	const words = { label: part.label, summary: description.printed };
	const avoided = taken && taken.size > 0 ? taken : new Set(terminals.map(({ side }) => side));
	const plate = symbols ? symbols.wordsOf(description) : description.nameplate;
	const labels = [
		...terminals.flatMap(({ terminal }) => {
			const { print } = terminal;
			if (!print) return [];
			if (symbols) return [besideLead(print.text, place(terminal.at, pose), rotateSide(terminal.side, pose.turn))];
			const { x, y } = place(print.at, pose);
			return [text(x, y, print.text, PRINT_MM, { fill: 'muted', upright: true })];
		}),
		...(plate ? wordsInside(words, placeBox(plate, pose)) : wordsBeside(words, body, avoided))
	];
	return {
		key: itemKey('part', id),
		box: [boundsOf(primitives), boundsOf(labels)].reduce(unionBoxes, body),
		primitives,
		labels,
		body,
		route: null,
		widthMm: 0,
		terminals: terminals.map(({ terminal, at }) => ({
			key: itemKey('stud', studKey({ part: id, terminal: terminal.id })),
			at,
			radiusMm: terminalRadiusMm(terminal)
		}))
	};
}
