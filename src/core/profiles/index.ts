/** Rule profiles: which law, standard or habit the numbers come from. */
export { PROFILE_IDS, type AmbientSettings, type Ampacity, type Profile, type ProfileId } from './types.ts';
export { isProfileId, profile, PROFILES } from './find.ts';
export { greatestDevice, type GreatestDevice } from './greatest-device.ts';
