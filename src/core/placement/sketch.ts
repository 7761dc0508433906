/** A plan being drawn on a copy: each step is a command, and the first that is refused ends it. */
import { change, setParams, type Command, type Diagram, type PartId } from '#core/diagram';
import { fitted } from './holders.ts';

export class Refused extends Error {}

export interface Sketch {
	readonly diagram: Diagram;
	readonly commands: readonly Command[];
	readonly buys: string[];
	readonly disturbed: string[];
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
		buys: [],
		disturbed: [],
		run,
		fit(part, terminal, ratingA, name) {
			const params = fitted(diagram.parts[part]!, terminal, ratingA, name.toLowerCase());
			if (!params) throw new Refused('There is no holder for another fuse.');
			run(setParams({ parts: [part], params }));
		}
	};
}
