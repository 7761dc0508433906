/**
 * A profile says which tables and limits the rules use. Numbers carry their source; those from memory are shown
 * as unverified.
 */
import type { Conductor } from '#core/diagram';
import type { Sourced } from '#core/tables';

export const PROFILE_IDS = ['us-small-craft', 'common-practice'] as const;
export type ProfileId = (typeof PROFILE_IDS)[number];

/** Amperage of a conductor under its conditions, and how it came about. */
export interface Ampacity {
	/** After all factors, amps. */
	readonly currentA: number;
	/** Before factors, amps. */
	readonly tableA: number;
	readonly table: string;
	/** Engine space, bundling, ambient: each with its source. Empty when none applies. */
	readonly factors: readonly { readonly name: string; readonly factor: number; readonly source: string }[];
	readonly unverified: boolean;
}

export interface AmbientSettings {
	readonly outsideC: number;
	readonly engineSpaceC: number;
}

export interface Profile {
	readonly id: ProfileId;
	readonly name: string;
	/** One sentence: what it is and what it does not cover. */
	readonly scope: string;
	ampacity(
		conductor: Pick<Conductor, 'gauge' | 'insulationC' | 'environment' | 'bundleCount'>,
		nominalV: number,
		ambient: AmbientSettings
	): Ampacity;
	readonly overcurrent: {
		/** Greatest device rating as a multiple of amperage, at this system voltage. */
		factor(nominalV: number): Sourced<number>;
		/** Next standard rating above amperage is allowed up to this multiple; null where `factor` is all. */
		readonly nextStandardUpTo: Sourced<number> | null;
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
	/** Continuous current as a share of a fuse's rating. */
	readonly fuseLoadShare: Sourced<number>;
	readonly smallestSeparateMm2: Sourced<number>;
	readonly smallestSheathedMm2: Sourced<number>;
}
