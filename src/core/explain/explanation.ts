import type { Confidence } from '#core/tables';
import type { FigureId } from './figure-id.ts';

/** Where an input comes from: drawn, assumed for want of it, read from a table, or worked out. */
export type Origin = 'diagram' | 'assumed' | 'table' | 'computed';

export interface Input {
	/** As in the formula. */
	readonly symbol: string;
	readonly name: string;
	readonly value: number;
	readonly unit: string;
	/** "16 AWG" beside 1.31 mm², or the value with its unit. */
	readonly text: string;
	readonly origin: Origin;
	readonly source: string;
	readonly confidence: Confidence;
	/** Opens in turn; null where it is the end of the thread. */
	readonly figure: FigureId | null;
}

/** Where one figure comes from. Plain data. */
export interface Explanation {
	readonly name: string;
	/** Null for a finding, which has figures and no value. Infinity where nothing limits it. */
	readonly value: number | null;
	readonly unit: string;
	readonly text: string;
	/** What is worked out, in words. */
	readonly words: string;
	/** Arithmetic over the inputs' symbols, in plain ASCII; worked out, it gives `value`. Empty for a finding. */
	readonly expression: string;
	/** The same as people write it: "Z = T × k1". */
	readonly formula: string;
	/** With the numbers put in: "160 A × 0.85 = 136 A". */
	readonly substituted: string;
	readonly inputs: readonly Input[];
	readonly caseName: string | null;
	readonly table: string | null;
	readonly row: string | null;
	readonly source: string;
	/** That of the least certain input. */
	readonly confidence: Confidence;
	readonly isAssumed: boolean;
	/** Further figures to open: of a finding, those of the things it is about. */
	readonly related: readonly Related[];
}

/** A figure by name, to be opened. */
export interface Related {
	readonly figure: FigureId;
	/** "Amperage of C3". */
	readonly name: string;
}
