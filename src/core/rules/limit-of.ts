import { greatestDevice, type Ampacity, type GreatestDevice } from '#core/profiles';
import type { ConductorView, Study } from './study.ts';

const known = new WeakMap<Ampacity, { readonly profile: Study['profile']; readonly nominalV: number; readonly limit: GreatestDevice }>();

/** Greatest device the profile allows for a conductor. */
export function limitOf({ profile, diagram }: Study, { ampacity }: Pick<ConductorView, 'ampacity'>): GreatestDevice {
	const { nominalV } = diagram.system;
	let kept = known.get(ampacity);
	if (kept?.profile !== profile || kept.nominalV !== nominalV) {
		known.set(ampacity, (kept = { profile, nominalV, limit: greatestDevice(profile, ampacity, nominalV) }));
	}
	return kept.limit;
}
