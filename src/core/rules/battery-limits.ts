/** Words of rules about what a battery may deliver and take. */
import type { BatteryBranch } from '#core/network';
import { ampsText } from '#core/units';
import type { Study } from './study.ts';
import { listed, partName } from './words.ts';

export interface OverLimit {
	readonly battery: BatteryBranch;
	readonly currentA: number;
	readonly limitA: number;
}

/** The battery furthest over its limit, and the others after it. */
export const worstFirst = (over: readonly OverLimit[]): OverLimit[] => over.toSorted((a, b) => timesLimit(b) - timesLimit(a));

const timesLimit = ({ currentA, limitA }: OverLimit): number => currentA / limitA;

/** "B1 120 A of 100 A and B2 110 A of 100 A". */
export const overText = (study: Study, over: readonly OverLimit[]): string =>
	listed(over.map(({ battery, currentA, limitA }) => `${partName(study.part(battery.part))} ${ampsText(currentA)} of ${ampsText(limitA)}`));
