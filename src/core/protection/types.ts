import type { ConductorId, PartId } from '#core/diagram';

/** Greatest current that can be sustained into a fault at one end of a conductor, and what limits it. */
export interface LetThrough {
	/** Amps; Infinity when nothing limits it. */
	readonly currentA: number;
	/** Devices (fuses, breakers) and self-limited sources forming the minimum cut: "protected by". */
	readonly limitedBy: readonly { readonly part: PartId; readonly link: string; readonly currentA: number }[];
	/** When unlimited: conductors of one path without protection, from a source to this end. */
	readonly unprotectedPath: readonly ConductorId[];
}

export interface ConductorProtection {
	readonly conductor: ConductorId;
	readonly from: LetThrough;
	readonly to: LetThrough;
	/** The greater of both ends, amps. */
	readonly currentA: number;
}
