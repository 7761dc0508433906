import { nextStandardRatingA } from '#core/tables';
import { ampsText, percentText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { fuseShares } from './fuse-share.ts';
import { partSubject } from './subjects.ts';
import { capital } from './words.ts';

interface Data {
	readonly name: string;
	readonly kind: string;
	readonly ratingA: number;
	readonly currentA: number;
	readonly sharePercent: number;
	readonly reason: string;
	readonly caseName: string;
	readonly neededA: number | null;
}

const remedy = ({ neededA }: Data): string =>
	neededA === null
		? 'Share the load between several circuits.'
		: `Fit at least ${ampsText(neededA)} if the conductors allow it; otherwise thicker conductors with it.`;

export const fuseBelowLoad = defineRule({
	meta: {
		id: 'fuse-below-load',
		title: 'A fuse or breaker carries its continuous load with room to spare',
		severity: 'warning',
		group: 'protection',
		why: 'A fuse run near its rating ages, heats its holder and opens in warm weather with nothing wrong; above its rating it opens sooner or later.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		over: (data: Data) => ({
			message: `${capital(data.name)} is a ${ampsText(data.ratingA)} ${data.kind} and carries ${ampsText(data.currentA)} continuously in “${data.caseName}”: it will open.`,
			remedy: remedy(data)
		}),
		close: (data: Data) => ({
			message: `${capital(data.name)} is a ${ampsText(data.ratingA)} ${data.kind} and carries ${ampsText(data.currentA)} continuously in “${data.caseName}”, more than ${percentText(data.sharePercent)} of its rating${data.reason}.`,
			remedy: remedy(data)
		})
	},

	*check(study) {
		const shareOf = fuseShares(study);
		for (const branch of devicesOf(study)) {
			const { index, device, origin } = branch;
			const share = shareOf(branch);
			const { currentA, caseId } = study.branchCurrent(index);
			if (caseId === null || !exceeds(currentA, share.value * device.ratingA)) continue;
			const isOver = exceeds(currentA, device.ratingA);
			yield {
				message: isOver ? 'over' : 'close',
				severity: isOver ? 'error' : 'warning',
				data: {
					name: deviceName(study, origin),
					kind: device.kind,
					ratingA: device.ratingA,
					currentA,
					sharePercent: 100 * share.value,
					reason: share.reason,
					caseName: study.diagram.cases[caseId]!.label,
					neededA: nextStandardRatingA(currentA / share.value / (1 + 1e-6))
				},
				at: [partSubject(origin.part)],
				caseId,
				source: share.source
			};
		}
	}
});
