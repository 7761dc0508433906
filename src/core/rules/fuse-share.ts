/** How much of its rating a fuse may carry for hours, by its neighbours and the heat around it. */
import { exceeds } from './conductor-words.ts';
import { devicesOf, type DeviceBranch } from './device-limits.ts';
import { groupBy } from './group-by.ts';
import { aroundPartC } from './params.ts';
import type { Study } from './study.ts';
import { celsiusText } from '#core/units';

export interface FuseShare {
	readonly value: number;
	readonly source: string;
	/** ", with loaded fuses on either side", or nothing. */
	readonly reason: string;
}

/** A neighbour counts as hot above this share of its rating, and from this many in a row: common practice, no source. */
const HOT_SHARE = 0.6;
const IN_A_ROW = 3;
/** Air around a fuse from which it carries less, and by how much: common practice, no source. */
const HOT_C = 40;
const HOT_FACTOR = { blade: 0.85, other: 0.9 } as const;

export function fuseShares(study: Study): (branch: DeviceBranch) => FuseShare {
	const grouped = groupedFuses(study);
	const { fuseLoadShare, fuseGroupedShare } = study.profile;
	return (branch) => {
		const isGrouped = grouped.has(branch.index) && fuseGroupedShare.value < fuseLoadShare.value;
		const share = isGrouped ? fuseGroupedShare : fuseLoadShare;
		const aroundC = aroundPartC(study, branch.origin.part);
		const isHot = aroundC > HOT_C && branch.device.kind === 'fuse';
		const factor = isHot ? HOT_FACTOR[branch.device.family?.startsWith('blade') ? 'blade' : 'other'] : 1;
		return {
			value: share.value * factor,
			source: isHot ? `${share.source}; lower in hot air by common practice, no source` : share.source,
			reason: (isGrouped ? ' among loaded neighbours' : '') + (isHot ? ` at ${celsiusText(aroundC)}` : '')
		};
	};
}

/** Fuses of one part in a row of three or more that are all hot. */
function groupedFuses(study: Study): ReadonlySet<number> {
	const grouped = new Set<number>();
	for (const fuses of groupBy(devicesOf(study), ({ origin }) => origin.part).values()) {
		let row: number[] = [];
		for (const { index, device } of fuses) {
			if (exceeds(study.branchCurrent(index).currentA, HOT_SHARE * device.ratingA)) row.push(index);
			else row = [];
			if (row.length >= IN_A_ROW) for (const hot of row) grouped.add(hot);
		}
	}
	return grouped;
}
