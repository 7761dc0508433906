import type { Conductor, Surroundings } from '#core/diagram';
import type { Ampacity, Profile } from '#core/profiles';
import type { ConductorView, Study } from './study.ts';

/** What a conductor carries where it runs. */
export const amperageIn = (profile: Profile, nominalV: number, conductor: Conductor, { environment, ambientC }: Surroundings): Ampacity =>
	profile.ampacity({ ...conductor, environment }, nominalV, { outsideC: ambientC, engineSpaceC: ambientC });

/** What another conductor would carry in the same place. */
export const amperageAs = (
	{ profile, diagram }: Pick<Study, 'profile' | 'diagram'>,
	{ conductor, around }: Pick<ConductorView, 'conductor' | 'around'>,
	other: Partial<Pick<Conductor, 'gauge' | 'insulationC'>>
): Ampacity => amperageIn(profile, diagram.system.nominalV, { ...conductor, ...other }, around);
