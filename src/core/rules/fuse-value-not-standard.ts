import { greatestDevice } from '#core/profiles';
import { FUSE_FAMILIES, fuseFamily, type FuseFamilyId } from '#core/tables';
import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { deviceNames, devicesOf, isUnverified, type DeviceBranch } from './device-limits.ts';
import { groupBy } from './group-by.ts';
import type { Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { capital, listed } from './words.ts';

interface Data {
	readonly names: string;
	readonly family: string;
	readonly ratingsA: readonly number[];
	/** Other types made for all of these ratings. */
	readonly types: readonly string[];
	/** Ratings of this type next to them that the conductors allow. */
	readonly nearA: readonly number[];
}

export const fuseValueNotStandard = defineRule({
	meta: {
		id: 'fuse-value-not-standard',
		title: 'A fuse has a rating its type is made in',
		severity: 'note',
		group: 'protection',
		why: 'A rating nobody makes is replaced on the day of fitting by whatever is at hand.',
		source: { default: 'ratings usual for the type: common practice, no source' }
	},

	messages: {
		unusual: ({ names, family, ratingsA, types, nearA }: Data) => ({
			message: `${capital(names)}: a ${family} is not usually made for ${listed(ratingsA.map(ampsText)).replace(' and ', ' or ')}.`,
			remedy: remedy({ ratingsA, types, nearA })
		})
	},

	/** One report for each part and type. */
	*check(study) {
		const unusual = devicesOf(study).flatMap((branch) => {
			const { family, ratingA } = branch.device;
			return family !== null && !fuseFamily(family).ratingsA.value.includes(ratingA) ? [{ branch, family, ratingA }] : [];
		});
		for (const alike of groupBy(unusual, ({ branch, family }) => `${branch.origin.part} ${family}`).values()) {
			const [{ branch, family }] = alike as [(typeof unusual)[number]];
			const made = fuseFamily(family).ratingsA;
			const ratingsA = ascending(alike.map(({ ratingA }) => ratingA));
			yield {
				message: 'unusual',
				data: {
					names: deviceNames(
						study,
						alike.map((item) => item.branch)
					),
					family: fuseFamily(family).name,
					ratingsA,
					types: typesFor(ratingsA, study.diagram.system.nominalV),
					nearA: ascending(alike.flatMap((item) => nearRatings(study, item.branch, made.value)))
				},
				at: [partSubject(branch.origin.part)],
				unverified: isUnverified(made)
			};
		}
	}
});

const alternatives = (texts: readonly string[]): string => listed(texts).replace(' and ', ' or ');

/** Another type first: it keeps what loads and conductors were chosen for. */
function remedy({ ratingsA, types, nearA }: Pick<Data, 'ratingsA' | 'types' | 'nearA'>): string {
	const type = types.length > 0 ? `Use a type made for ${listed(ratingsA.map(ampsText))} (${alternatives(types)})` : null;
	const rating = nearA.length > 0 ? `${alternatives(nearA.map(ampsText))} in the type fitted` : null;
	if (type) return `${type}${rating ? `, or ${rating}` : ''}.`;
	return rating
		? `Choose ${rating}, or another type.`
		: 'Choose another type: the ratings of this one next to it do not suit the conductors.';
}

/** Types on sale in every one of these ratings that stand the system's voltage. */
const typesFor = (ratingsA: readonly number[], nominalV: number): string[] =>
	FUSE_FAMILIES.filter((id: FuseFamilyId) => {
		const { ratingsA: made, maxSystemV } = fuseFamily(id);
		return maxSystemV.value > nominalV && ratingsA.every((ratingA) => made.value.includes(ratingA));
	}).map((id) => fuseFamily(id).name);

/** The ratings below and above, as far as every conductor on the device's own terminals may be protected by them. */
function nearRatings(study: Study, { a, b, device }: DeviceBranch, made: readonly number[]): number[] {
	const { nominalV } = study.diagram.system;
	const near = [made.findLast((ratingA) => ratingA < device.ratingA), made.find((ratingA) => ratingA > device.ratingA)];
	const limitsA = study.conductors
		.filter(({ branch }) => [branch.a, branch.b].some((end) => end === a || end === b))
		.filter(({ id }) => study.protection(id).currentA < Infinity)
		.map(({ ampacity }) => greatestDevice(study.profile, ampacity, nominalV).currentA);
	return near.filter((ratingA) => ratingA !== undefined && !limitsA.some((limitA) => exceeds(ratingA, limitA))) as number[];
}

/** Each value once. */
const ascending = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);
