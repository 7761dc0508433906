/**
 * A profile says which tables and limits the rules use. Numbers carry their source; those from memory are shown
 * as unverified. All of them have a key, so that a custom profile can put others in their place.
 */
import type { Conductor } from '#core/diagram';
import type { Confidence, Sourced } from '#core/tables';

export const PROFILE_IDS = [
	'common-practice',
	'us-small-craft',
	'abyc-e11',
	'rv-nec-552',
	'metric-small-craft',
	'caravan',
	'custom'
] as const;
export type ProfileId = (typeof PROFILE_IDS)[number];

/** Amperage of a conductor under its conditions, and how it came about. */
export interface Ampacity {
	/** After all factors, amps. */
	readonly currentA: number;
	/** Before factors, amps. */
	readonly tableA: number;
	/** The table used, its column, and how the size was read into it: tables differ by up to 1.57 times. */
	readonly table: string;
	/** Engine space, bundling, ambient: each with its source. Empty when none applies. */
	readonly factors: readonly { readonly name: string; readonly factor: number; readonly source: string }[];
	/** Greatest device a table gives for this size, whatever its amperage; null where the profile has no such table. */
	readonly deviceBySize: Sourced<number> | null;
	readonly unverified: boolean;
}

export interface AmbientSettings {
	readonly outsideC: number;
	readonly engineSpaceC: number;
}

export type ConductorConditions = Pick<Conductor, 'gauge' | 'insulationC' | 'environment' | 'bundleCount'>;

/** One number of a profile, for lists and forms. */
export interface ProfileNumber {
	/** Names the number in a custom profile. */
	readonly key: string;
	readonly title: string;
	/** "A", "m", "%", "×", "mm²", "V" … */
	readonly unit: string;
	readonly group: 'protection' | 'voltage-drop' | 'conductors' | 'factors' | 'amperage';
	readonly value: number;
	readonly source: string;
	readonly confidence: Confidence;
	/** What it was before the custom profile changed it; null where it did not. */
	readonly changedFrom: number | null;
}

export interface Profile {
	readonly id: ProfileId;
	/** The profile whose clauses rules cite: its own id, or what a custom profile was made from. */
	readonly basedOn: ProfileId;
	readonly name: string;
	/** One sentence: what it is and what it does not cover. */
	readonly scope: string;
	/** Every number in it, in the order to show them. */
	readonly numbers: readonly ProfileNumber[];
	ampacity(conductor: ConductorConditions, nominalV: number, ambient: AmbientSettings): Ampacity;
	readonly overcurrent: {
		/** Greatest device rating as a multiple of amperage, at this system voltage. */
		factor(nominalV: number): Sourced<number>;
		/** Next standard rating above amperage is allowed up to this multiple; 1 where `factor` is all. */
		readonly nextStandardUpTo: Sourced<number>;
		/** Greatest length along the conductor without protection, metres. */
		readonly unsheathedM: Sourced<number>;
		readonly sheathedM: Sourced<number>;
		readonly batteryM: Sourced<number>;
	};
	readonly drop: {
		readonly criticalPercent: Sourced<number>;
		/** Warn above, where the profile has a softer limit. */
		readonly ordinaryWarnPercent: Sourced<number>;
		readonly ordinaryPercent: Sourced<number>;
	};
	/** Resistivity of copper that voltage drop is worked out with, Ω·mm²/m. */
	readonly dropResistivity: Sourced<number>;
	/** Continuous current as a share of a fuse's rating. */
	readonly fuseLoadShare: Sourced<number>;
	/** The same for three or more loaded fuses side by side, which heat one another. */
	readonly fuseGroupedShare: Sourced<number>;
	readonly smallestSeparateMm2: Sourced<number>;
	readonly smallestSheathedMm2: Sourced<number>;
}
