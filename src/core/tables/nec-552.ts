import { metresFromInches } from '#core/units';
import type { AwgSize } from './cfr-183-425.ts';
import type { Sourced } from './sourced.ts';

/** Greatest overcurrent device of low-voltage circuits by size, amps; 18 and 16 AWG stranded only. Not seen in a source. */
export const NEC_552_DEVICE: Sourced<Readonly<Partial<Record<AwgSize, number>>>> = {
	value: { '18': 6, '16': 8, '14': 15, '12': 20, '10': 30 },
	source: 'NFPA 70 Table 552.10(E)(1), from memory',
	confidence: 'memory'
};

/** Greatest distance of the device from where the supply connects: 18 in. */
export const NEC_552_PLACEMENT_M: Sourced<number> = {
	value: metresFromInches(18),
	source: 'NFPA 70:2020 552.10(E)(4), 18 in',
	confidence: 'verified'
};

/** Smallest bond of the battery to the chassis, AWG; nor smaller than the lead that is not bonded. */
export const NEC_552_BOND: Sourced<AwgSize> = { value: '8', source: 'NFPA 70:2008 552.10(C)(4)', confidence: 'verified' };
