/** Studs to choose from in a form: what the canvas does by dragging, done by name. */
import { studKey, type Diagram, type StudKey } from '#core/diagram';
import { describe, type Terminal } from '#core/parts';
import { studName } from '#editor';

export interface StudChoice {
	readonly value: StudKey;
	readonly text: string;
}

export const takesLug = (terminal: Terminal): boolean => !terminal.mountingPlate;

export const takesBlock = (terminal: Terminal): boolean =>
	!terminal.mountingPlate && terminal.kind === 'stud' && terminal.acceptsBlock !== false;

/** In the diagram's order; `current` is among them even where it no longer exists. */
export function studChoices(diagram: Diagram, takes: (terminal: Terminal) => boolean, current?: StudKey): StudChoice[] {
	const choices = Object.entries(diagram.parts).flatMap(([part, value]) =>
		describe(value)
			.terminals.filter(takes)
			.map(({ id }) => ({ value: studKey({ part, terminal: id }), text: studName(diagram, { part, terminal: id }) }))
	);
	if (current === undefined || choices.some(({ value }) => value === current)) return choices;
	return [{ value: current, text: current }, ...choices];
}
