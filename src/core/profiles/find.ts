import type { Diagram } from '#core/diagram';
import { abycE11 } from './abyc-e11.ts';
import { caravan } from './caravan.ts';
import { commonPractice } from './common-practice.ts';
import { makeProfile } from './make.ts';
import { metricSmallCraft } from './metric-small-craft.ts';
import { rvNec552 } from './rv-nec-552.ts';
import type { ProfileSpec } from './spec.ts';
import type { Profile, ProfileId, ProfileNumber } from './types.ts';
import { usSmallCraft } from './us-small-craft.ts';

type PublishedId = Exclude<ProfileId, 'custom'>;
type Changes = NonNullable<Diagram['customProfile']>;

const SPECS: Readonly<Record<PublishedId, ProfileSpec>> = {
	'common-practice': commonPractice,
	'us-small-craft': usSmallCraft,
	'abyc-e11': abycE11,
	'rv-nec-552': rvNec552,
	'metric-small-craft': metricSmallCraft,
	caravan
};

const published = Object.fromEntries(Object.entries(SPECS).map(([id, spec]) => [id, makeProfile(spec)])) as Record<PublishedId, Profile>;

/** All profiles, in the order they are offered; "custom" before anything was changed in it. */
export const PROFILES: Readonly<Record<ProfileId, Profile>> = { ...published, custom: customProfile(null) };

export const isProfileId = (id: string): id is ProfileId => Object.hasOwn(PROFILES, id);

/** The profile of that id. A file may name one this build does not know: then common practice; ask `isProfileId`. */
export const profile = (id: string): Profile => (isProfileId(id) ? PROFILES[id] : PROFILES['common-practice']);

const made = new WeakMap<Changes, Profile>();

/** The profile a diagram is checked against, with the diagram's own numbers if it is a custom one. */
export function profileOf({ profile: id, customProfile: changes }: Pick<Diagram, 'profile' | 'customProfile'>): Profile {
	if (id !== 'custom' || !changes) return profile(id);
	if (!made.has(changes)) made.set(changes, customProfile(changes));
	return made.get(changes)!;
}

/** Every number of a profile with its source, as lists and forms show them. */
export const profileNumbers = ({ numbers }: Profile): readonly ProfileNumber[] => numbers;

/** Keys of a custom profile that its base does not have: nothing is done with them. */
export function unknownNumbers(diagram: Pick<Diagram, 'profile' | 'customProfile'>): readonly string[] {
	const known = new Set(profileOf(diagram).numbers.map(({ key }) => key));
	return Object.keys(diagram.profile === 'custom' ? (diagram.customProfile?.numbers ?? {}) : {}).filter((key) => !known.has(key));
}

function customProfile(changes: Changes | null): Profile {
	const basedOn: PublishedId = changes && Object.hasOwn(SPECS, changes.base) ? (changes.base as PublishedId) : 'common-practice';
	const spec = SPECS[basedOn];
	const made = makeProfile(spec, changes?.numbers);
	const changed = made.numbers.filter(({ changedFrom }) => changedFrom !== null).length;
	return {
		...made,
		id: 'custom',
		basedOn,
		name: changed === 0 ? 'Custom' : `Custom, from ${spec.name}`,
		scope: `${changed === 0 ? 'No number' : `${changed} ${changed === 1 ? 'number' : 'numbers'}`} changed in "${spec.name}", by whoever made this diagram. ${spec.scope}`
	};
}
