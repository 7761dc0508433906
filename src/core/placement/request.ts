import type { CaseId, Command, Diagram, PartId } from '#core/diagram';
import type { Finding } from '#core/rules';

/** A circuit that wants a place on a bus. */
export interface NewCircuit {
	/** Label of the device it feeds, or is fed by. */
	readonly name: string;
	readonly currentA: number;
	/** One way, metres. */
	readonly lengthM: number;
	/** Held to the tight voltage-drop limit. */
	readonly critical: boolean;
	readonly continuous: boolean;
	/** A charger or controller: it feeds the bus. */
	readonly source?: boolean;
	/** Fuse asked for by the device's maker; chosen from the current when left out. */
	readonly fuseA?: number;
	/** Operating cases in which it is not used. */
	readonly offIn?: readonly CaseId[];
}

export interface FullBusRequest {
	readonly bus: PartId;
	readonly circuits: readonly NewCircuit[];
	/** The system is built: moving what is there costs work. */
	readonly built: boolean;
}

export interface PlacementFigures {
	/** Greatest current of a bar segment of the bus, and the bar's rating. */
	readonly greatestA: number;
	readonly ratedA: number | null;
	/** Heat of the joints on the bus's own studs in their worst cases, more than before, watts. */
	readonly jointHeatW: number;
	/** Most that any load there before loses more, percent of nominal voltage. */
	readonly dropPercent: number;
	readonly freePositions: number;
	readonly freeEnds: number;
}

export interface PlacementOption {
	/** "end-stud", "twin", "panel", "re-shuffle", "second-bus", "longer-bus", joined by "+" in the order of the ranking's table. */
	readonly id: string;
	/** What goes where, in a sentence. */
	readonly title: string;
	/** True when it brings no error of its own. */
	readonly feasible: boolean;
	/** A short cut that is never offered, shown with what is wrong with it. */
	readonly shortcut: boolean;
	/** Why it is refused; empty where it is feasible. */
	readonly reasons: readonly string[];
	readonly added: readonly Finding[];
	readonly cleared: readonly Finding[];
	readonly buys: readonly string[];
	/** Connections that are there and have to be opened. */
	readonly disturbed: readonly string[];
	/** What to look at that the rules do not, such as a cover whose measures are not given. */
	readonly notes: readonly string[];
	readonly figures: PlacementFigures | null;
	/** Less is better; compared among feasible ones. */
	readonly cost: number;
	/** The change as one undo step; null where it cannot be drawn. */
	readonly command: Command | null;
	/** The diagram after it; null likewise. */
	readonly diagram: Diagram | null;
}

export interface FullBusOptions {
	/** Feasible ones first, best first; then those refused; then short cuts. */
	readonly options: readonly PlacementOption[];
	/**
	 * Errors that every one of the options brings: they are about what feeds the bus, and no landing avoids them. They
	 * are not held against an option.
	 */
	readonly whereverItLands: readonly Finding[];
}
