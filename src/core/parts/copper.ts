/** Resistances of the metal inside parts. */
import { COPPER_OHM_MM2_PER_M, type FuseFamilyId } from '#core/tables';
import type { Link, LinkEnd, ProtectiveDevice } from './define.ts';

/** Ohms of a copper bar between two studs. */
export const barResistanceOhm = (lengthMm: number, sectionMm2: number): number =>
	(COPPER_OHM_MM2_PER_M.value * (lengthMm / 1000)) / sectionMm2;

/** Fuses lose about 70 to 100 mV at their rating, whatever it is: common practice, no source. */
export const fuseResistanceOhm = (ratingA: number): number => 0.08 / ratingA;

interface FuseOptions {
	readonly ratingA: number;
	readonly family: FuseFamilyId | null;
	readonly kind?: ProtectiveDevice['kind'];
	readonly ratedV?: number | null;
	readonly breakingA?: number | null;
	readonly polarised?: boolean;
	readonly resetsItself?: boolean;
}

/** A fuse or breaker between two link ends. */
export function protectiveLink(id: string, between: readonly [LinkEnd, LinkEnd], options: FuseOptions): Link {
	const { ratingA, kind = 'fuse', ratedV = null, breakingA = null, ...rest } = options;
	return {
		kind: 'protective',
		id,
		between,
		resistanceOhm: fuseResistanceOhm(ratingA),
		ratedA: ratingA,
		device: { kind, ratingA, ratedV, breakingA, ...rest }
	};
}

/** A row of bar segments joining the ends one after the other: "bar-1" lies between the first two. */
export const barSegments = (ends: readonly LinkEnd[], pitchMm: number, sectionMm2: number, ratedA: number | null): Link[] =>
	ends.slice(1).map((end, index) => ({
		kind: 'segment',
		id: `bar-${index + 1}`,
		between: [ends[index]!, end],
		resistanceOhm: barResistanceOhm(pitchMm, sectionMm2),
		ratedA
	}));
