import { fuseFamily } from '#core/tables';
import { ampsText } from '#core/units';
import { defineRule } from './define.ts';
import { deviceNames, devicesOf, isUnverified } from './device-limits.ts';
import { groupBy } from './group-by.ts';
import { partSubject } from './subjects.ts';
import { capital, listed } from './words.ts';

interface Data {
	readonly names: string;
	readonly family: string;
	readonly ratingsA: readonly number[];
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
		unusual: ({ names, family, ratingsA, nearA }: Data) => ({
			message: `${capital(names)}: a ${family} is not usually made for ${listed(ratingsA.map(ampsText)).replace(' and ', ' or ')}.`,
			remedy: `Choose ${listed(nearA.map(ampsText)).replace(' and ', ' or ')}, or another type.`
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
			const nearA = ratingsA.flatMap((rating) => [made.value.findLast((a) => a < rating), made.value.find((a) => a > rating)]);
			yield {
				message: 'unusual',
				data: {
					names: deviceNames(
						study,
						alike.map((item) => item.branch)
					),
					family: fuseFamily(family).name,
					ratingsA,
					nearA: ascending(nearA.filter((a) => a !== undefined))
				},
				at: [partSubject(branch.origin.part)],
				unverified: isUnverified(made)
			};
		}
	}
});

/** Each value once. */
const ascending = (values: readonly number[]): number[] => [...new Set(values)].sort((a, b) => a - b);
