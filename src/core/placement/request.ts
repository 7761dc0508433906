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
	/** Heat of all joints on studs in their worst cases, more than before, watts. */
	readonly jointHeatW: number;
	/** Most that any load there before loses more, percent of nominal voltage. */
	readonly dropPercent: number;
	/** On the bus and on any that is added. */
	readonly freePositions: number;
	readonly freeEnds: number;
}

/** One term of what an option costs, in words for people. */
export interface PlacementCost {
	readonly what: string;
	readonly cost: number;
}

export interface PlacementOption {
	/**
	 * "position", "end-stud", "twin", "panel", "new-panel", "adapter", "upstream", "second-bus", "longer-bus", "merge", "re-shuffle",
	 * "reduce", joined by "+".
	 */
	readonly id: string;
	/** What goes where, in a sentence. */
	readonly title: string;
	/** True when it brings no error of its own. */
	readonly feasible: boolean;
	/** A short cut that is never offered, shown with what is wrong with it. */
	readonly shortcut: boolean;
	/** Why it is refused; empty where it is feasible. */
	readonly reasons: readonly string[];
	/** What is done, one sentence each. */
	readonly steps: readonly string[];
	/** Something only the user can say, such as whether a circuit may go; null where nothing is asked. */
	readonly asks: string | null;
	readonly added: readonly Finding[];
	/** Of those, what not every option brings. */
	readonly own: readonly Finding[];
	readonly cleared: readonly Finding[];
	readonly buys: readonly string[];
	/** Connections that are there and have to be opened. */
	readonly disturbed: readonly string[];
	/** What to look at that the rules do not, such as a cover whose measures are not given. */
	readonly notes: readonly string[];
	/** What makes work on it, or life with it, riskier. */
	readonly risks: readonly string[];
	readonly figures: PlacementFigures | null;
	/** Less is better; compared among feasible ones. Infinite where it cannot be drawn. */
	readonly cost: number;
	/** What it is made of, dearest first. */
	readonly costs: readonly PlacementCost[];
	/** The change as one undo step; null where it cannot be drawn, or is never to be done. */
	readonly command: Command | null;
	/** The same for a short cut too, to be looked at. */
	readonly sketched: Command | null;
	/** The diagram after it; null likewise. */
	readonly diagram: Diagram | null;
}

export interface FullBusOptions {
	/** Feasible ones first, best first; then those refused; then short cuts. */
	readonly options: readonly PlacementOption[];
	/**
	 * Errors and warnings that every one of the options on the bus brings: they are about the circuits themselves or what feeds the
	 * bus, and no landing avoids them. They are not held against an option.
	 */
	readonly whereverItLands: readonly Finding[];
	/** Positions with nothing on them and no fuse behind them, before anything is landed. */
	readonly free: readonly string[];
}
