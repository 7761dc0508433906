import { metresFromInches } from '#core/units';
import type { Sourced } from './sourced.ts';

/** Greatest rating of a fuse or breaker as a multiple of the Table 5 amperage, circuits under 50 V. */
export const OVERCURRENT_FACTOR_UNDER_50_V: Sourced<number> = { value: 1.5, source: '33 CFR 183.455(c)(1)', confidence: 'verified' };

/** The same at 50 V and more, before the next standard size is considered. */
export const OVERCURRENT_FACTOR_FROM_50_V: Sourced<number> = { value: 1, source: '33 CFR 183.455(c)(2)', confidence: 'verified' };

/** At 50 V and more the next standard size above the amperage may be used up to this multiple. */
export const NEXT_STANDARD_UP_TO: Sourced<number> = { value: 1.5, source: '33 CFR 183.455(c)(2)', confidence: 'verified' };

/** Greatest distance from the source of power along the conductor: 7 in. */
export const UNSHEATHED_M: Sourced<number> = { value: metresFromInches(7), source: '33 CFR 183.455(b)(1), 7 in', confidence: 'verified' };

/** The same for a conductor in a sheath or enclosure over its whole length: 40 in. */
export const SHEATHED_M: Sourced<number> = { value: metresFromInches(40), source: '33 CFR 183.455(b)(2), 40 in', confidence: 'verified' };

/** Greatest distance from a battery: 72 in. The main feed to an engine cranking motor is exempt. */
export const BATTERY_M: Sourced<number> = { value: metresFromInches(72), source: '33 CFR 183.460(a), 72 in', confidence: 'verified' };

/** Greatest voltage drop at the load terminals, circuits under 50 V, percent. */
export const CFR_DROP_PERCENT: Sourced<number> = { value: 10, source: '46 CFR 169.672', confidence: 'verified' };
