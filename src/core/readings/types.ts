import type { NodeIndex } from '#core/network';

/** What a meter showed. */
export interface Reading {
	/** Red lead. */
	readonly at: NodeIndex;
	/** Black lead. */
	readonly to: NodeIndex;
	readonly volts: number;
}

/** Something whose resistance may be higher than drawn. A branch of a conductor stands for its copper and both lugs. */
export type SuspectRef = { readonly kind: 'branch' | 'battery'; readonly index: number };

export interface Suspect {
	readonly ref: SuspectRef;
	/** Best estimate of what is added to it, with the uncertainty of the meter, ohms. */
	readonly extraOhm: number;
	readonly uncertaintyOhm: number;
	/** Through it in the case that was measured, the extra resistance included. */
	readonly currentA: number;
	/** What the extra resistance turns into heat, watts. */
	readonly heatW: number;
	/** How much of the difference between readings and model it takes away, 0 to 1. */
	readonly explains: number;
	/** Fall of the sum of squared errors over their variance: the higher, the likelier. */
	readonly gain: number;
}

export type Verdict =
	/** Nothing beyond the meter's error. */
	| { readonly kind: 'agrees' }
	| { readonly kind: 'found'; readonly suspect: Suspect }
	/** The readings cannot tell these apart, likeliest first. */
	| { readonly kind: 'several'; readonly suspects: readonly Suspect[] }
	/** There is a difference, and no single element makes it; the nearest is given where there is one. */
	| { readonly kind: 'none-explains'; readonly nearest: Suspect | null }
	/** Fewer than two readings, or none between points that current flows between. */
	| { readonly kind: 'too-few' }
	/** The case has no solution, so there is nothing to compare with. */
	| { readonly kind: 'collapsed' };

export interface Comparison {
	/** What the model gives for each reading, volts, in their order. */
	readonly modelV: readonly number[];
	/** The same after the batteries' volts and the loads' draw were fitted, and the suspect, if one was found. */
	readonly fittedV: readonly number[];
	/** What was fitted besides: batteries stand this much above the model, and loads draw this much more, as a share. */
	readonly batteryOffsetV: number;
	readonly drawChange: number;
	readonly verdict: Verdict;
	/** Nodes whose reading against the first reading's black lead would separate the suspects best, best first. */
	readonly next: readonly NodeIndex[];
}
