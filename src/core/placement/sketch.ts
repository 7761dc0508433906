/** A plan being drawn on a copy: each step is a command, and the first that is refused ends it. */
import { change, setParams, type Command, type Diagram, type PartId } from '#core/diagram';
import { fitted } from './holders.ts';

export class Refused extends Error {}

/** Something to buy, counted in pieces: lugs, fuses, blocks, buses and covers are a piece each. */
export interface Buy {
	readonly text: string;
	readonly pieces: number;
	/** Of these, what takes the place of a piece on the drawing: before anything is built it costs no more. */
	readonly instead?: number;
}

/** A conductor that is there and gets another place. */
export interface Move {
	readonly text: string;
	/** True where its lug does not serve again, or hardly reaches. */
	readonly newLug: boolean;
}

export interface Sketch {
	readonly diagram: Diagram;
	readonly commands: readonly Command[];
	/** What is done, one sentence each. */
	readonly steps: string[];
	readonly buys: Buy[];
	readonly moves: Move[];
	readonly risks: string[];
	/** Something only the user can say; null where nothing is asked. */
	asks: string | null;
	/** Throws `Refused` with the reason. */
	run(command: Command): void;
	/** Fits a fuse behind a terminal and names what it feeds. */
	fit(part: PartId, terminal: string, ratingA: number, name: string): void;
}

export function sketchOn(start: Diagram): Sketch {
	let diagram = start;
	const commands: Command[] = [];
	const run = (command: Command) => {
		const reason = command.refuse(diagram);
		if (reason !== null) throw new Refused(reason);
		diagram = change(diagram, command).diagram;
		commands.push(command);
	};
	return {
		get diagram() {
			return diagram;
		},
		commands,
		steps: [],
		buys: [],
		moves: [],
		risks: [],
		asks: null,
		run,
		fit(part, terminal, ratingA, name) {
			const params = fitted(diagram.parts[part]!, terminal, ratingA, name.toLowerCase());
			if (!params) throw new Refused('There is no holder for another fuse.');
			run(setParams({ parts: [part], params }));
		}
	};
}
