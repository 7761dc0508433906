/** Rule profiles: which law, standard or habit the numbers come from. */
export {
	PROFILE_IDS,
	type AmbientSettings,
	type Ampacity,
	type ConductorConditions,
	type Profile,
	type ProfileId,
	type ProfileNumber
} from './types.ts';
export { isProfileId, profile, profileNumbers, profileOf, PROFILES, unknownNumbers } from './find.ts';
export { greatestDevice, type GreatestDevice } from './greatest-device.ts';
