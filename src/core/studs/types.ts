import type { Gauge, StackItem, StudKey } from '#core/diagram';
import type { Terminal } from '#core/parts';

/** One layer of a stud's stack with its size; heights are millimetres above the seat. */
export interface Layer {
	readonly item: StackItem;
	/** Of a lug's conductor; null for everything else. */
	readonly gauge: Gauge | null;
	/** "4/0 AWG lug of C1", "fuse block F7", "washer". */
	readonly label: string;
	readonly bottomMm: number;
	readonly thicknessMm: number;
	/** Diameter of the outline in side view. */
	readonly widthMm: number;
	/** Whether current may pass from the face below to the face above through this layer. */
	readonly conducts: boolean;
}

export interface Stack {
	readonly key: StudKey;
	readonly terminal: Terminal;
	/** From the seat upward; drawn order first, then anything landed but not yet placed, then assumed washers and nut. */
	readonly layers: readonly Layer[];
	/** Lugs and block plates; washers and nuts are not counted. */
	readonly terminalCount: number;
	/** Height of everything under the nut. */
	readonly heightMm: number;
	/** Thread beyond the nut; negative when the nut is not filled. Null for a clamp. */
	readonly threadLeftMm: number | null;
	/** True when washers and nut were assumed because none is drawn. */
	readonly hardwareAssumed: boolean;
	/** The stack as a sentence. */
	readonly sentence: string;
}
