/**
 * The electrical network behind a diagram. Nodes are numbered; terminals joined by ideal connections (a fuse
 * block's plate on its stud, lugs in one stack) share a node. Resistances are ohms at working temperature.
 */
import type { ConductorId, Part, PartId, StudKey, TerminalRef } from '#core/diagram';
import type { Link, PartDefinition, ProtectiveDevice, Terminal } from '#core/parts';

export type NodeIndex = number;

/** Where in the diagram a branch comes from. */
export type Origin =
	{ readonly kind: 'conductor'; readonly id: ConductorId } | { readonly kind: 'link'; readonly part: PartId; readonly link: string };

export interface Branch {
	readonly index: number;
	readonly a: NodeIndex;
	readonly b: NodeIndex;
	/** Greater than zero. */
	readonly resistanceOhm: number;
	readonly origin: Origin;
	/** Fuse or breaker in this branch, if any. */
	readonly device: ProtectiveDevice | null;
	/** Part whose case level opens this branch (0 is open), if any. */
	readonly switchedBy: PartId | null;
	readonly ratedA: number | null;
	readonly kind: 'conductor' | 'segment' | 'shunt' | 'switch' | 'protective';
}

/** A branch whatever its resistance. */
export type Wire = Omit<Branch, 'resistanceOhm'>;

interface TwoPole {
	readonly index: number;
	readonly part: PartId;
	readonly link: string;
	readonly positive: NodeIndex;
	readonly negative: NodeIndex;
}

export interface BatteryBranch extends TwoPole {
	readonly emfV: number;
	readonly resistanceOhm: number;
	readonly faultEmfV: number;
	readonly faultResistanceOhm: number;
	readonly capacityAh: number;
	readonly continuousA: number | null;
	/** Open-circuit voltage when nearly empty. Left out: as `emfV`. */
	readonly lowEmfV?: number;
}

export interface SourceBranch extends TwoPole {
	readonly maxA: number;
	readonly setV: number;
	/** Index of the load that feeds it, or null when fed from outside the drawing. */
	readonly fedBy: number | null;
	readonly efficiency: number;
	readonly blocksReverse: boolean;
	readonly alwaysOn: boolean;
	/** False when a fault can draw more than `maxA` from it. Left out: true. */
	readonly selfLimiting?: boolean;
}

export interface LoadBranch extends TwoPole {
	readonly draw:
		| { readonly kind: 'power'; readonly watts: number }
		| { readonly kind: 'current'; readonly amps: number }
		| { readonly kind: 'resistance'; readonly ohms: number };
	/** Index of the source whose delivery sets this load's draw (a converter's input), or null. */
	readonly followsSource: number | null;
	readonly reversible: boolean;
	readonly critical: boolean;
	/** What it draws while it starts, as a multiple of `draw`. Left out: 1. */
	readonly startTimes?: number;
}

/** What the network needs to know of a part; null definition for a kind this build does not know. */
export type PartLookup = (part: Part) => {
	readonly definition: PartDefinition | null;
	readonly terminals: readonly Terminal[];
	readonly links: readonly Link[];
};

/** A reference that leads nowhere: the conductor or mount is left out of the network. */
export interface Unresolved {
	readonly kind: 'conductor' | 'mount';
	/** Conductor, or fuse block that is mounted. */
	readonly id: string;
	readonly ref: TerminalRef;
	readonly reason: 'no-such-part' | 'unknown-kind' | 'no-such-terminal' | 'no-plate';
}

/**
 * Pole of a node, found by walking conductors and closed devices from battery and source terminals: "shorted"
 * reaches both terminals of one source, "floating" reaches none. The midpoint of a series string is "positive".
 */
export type Pole = 'positive' | 'negative' | 'shorted' | 'floating';

export interface Network {
	readonly nodeCount: number;
	readonly branches: readonly Branch[];
	readonly batteries: readonly BatteryBranch[];
	readonly sources: readonly SourceBranch[];
	readonly loads: readonly LoadBranch[];
	/** Node of each terminal, also of internal nodes written "part.@name" and of the chassis, written "@@chassis". */
	readonly nodeOf: ReadonlyMap<StudKey, NodeIndex>;
	/** Node of each conductor end: differs from the stud's node where a lug lies under a fuse. */
	readonly nodeOfEnd: ReadonlyMap<ConductorId, { readonly from: NodeIndex; readonly to: NodeIndex }>;
	readonly branchOfConductor: ReadonlyMap<ConductorId, number>;
	/** Branch index by "part.link". */
	readonly branchOfLink: ReadonlyMap<string, number>;
	/** By node, with every switch closed. */
	readonly poles: readonly Pole[];
	/** Branch indices at each node. */
	readonly branchesAt: readonly (readonly number[])[];
	/** What is not in the network, and why. */
	readonly unresolved: readonly Unresolved[];
}

/** A network whatever its resistances: what joins what. */
export interface Form extends Omit<Network, 'branches'> {
	readonly branches: readonly Wire[];
}
