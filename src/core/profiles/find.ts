import { commonPractice } from './common-practice.ts';
import type { Profile, ProfileId } from './types.ts';
import { usSmallCraft } from './us-small-craft.ts';

/** All profiles, in the order they are offered. */
export const PROFILES: Readonly<Record<ProfileId, Profile>> = {
	'common-practice': commonPractice,
	'us-small-craft': usSmallCraft
};

export const isProfileId = (id: string): id is ProfileId => Object.hasOwn(PROFILES, id);

/** The profile of that id. A file may name one this build does not know: then common practice; ask `isProfileId`. */
export const profile = (id: string): Profile => (isProfileId(id) ? PROFILES[id] : commonPractice);
