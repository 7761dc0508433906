/** Batteries as they stand together: in series strings, and strings in parallel as one bank. */
import { unionFind, type BatteryBranch } from '#core/network';
import { greatest } from './extremes.ts';
import { groupBy } from './group-by.ts';
import type { CaseResult, Study } from './study.ts';
import { derived } from './watch.ts';

/** Metal joined by conductors, fuses and bars; switches and relays are left open, because they part banks. */
export type BankMetal = number;

export interface BatteryString {
	/** From the negative end upward. */
	readonly batteries: readonly BatteryBranch[];
	readonly bottom: BankMetal;
	readonly top: BankMetal;
}

export interface Bank {
	/** One, or several in parallel. */
	readonly strings: readonly BatteryString[];
}

export interface Banks {
	readonly banks: readonly Bank[];
	metalOf(node: number): BankMetal;
	/** Metals between two batteries of one string, and the battery below and above. */
	readonly midPoints: ReadonlyMap<BankMetal, { readonly below: BatteryBranch; readonly above: BatteryBranch }>;
}

export const banksOf = derived(findBanks);

function findBanks({ form }: Study): Banks {
	const metal = unionFind(form.nodeCount);
	for (const { a, b, kind } of form.branches) if (kind !== 'switch') metal.union(a, b);
	const batteries = form.batteries.filter(({ positive, negative }) => !metal.same(positive, negative));
	const byBottom = groupBy(batteries, ({ negative }) => metal.find(negative));
	const byTop = groupBy(batteries, ({ positive }) => metal.find(positive));

	const midPoints = new Map<BankMetal, { below: BatteryBranch; above: BatteryBranch }>();
	for (const [point, [below]] of byTop) {
		const above = byBottom.get(point)?.[0];
		if (above) midPoints.set(point, { below: below!, above });
	}
	// Where several batteries meet on a middle point, they are in parallel there and not a string of their own.
	const next = (battery: BatteryBranch): BatteryBranch | null => {
		const point = metal.find(battery.positive);
		return byTop.get(point)!.length === 1 && byBottom.get(point)?.length === 1 ? byBottom.get(point)![0]! : null;
	};
	const followers = new Set(batteries.map(next));
	const strings = batteries
		.filter((battery) => !followers.has(battery))
		.map((first): BatteryString => {
			const chain = [first];
			for (let battery = next(first); battery && !chain.includes(battery); battery = next(battery)) chain.push(battery);
			return { batteries: chain, bottom: metal.find(first.negative), top: metal.find(chain.at(-1)!.positive) };
		});
	const banks = groupBy(strings, ({ bottom, top }) => `${bottom} ${top}`);
	return { banks: [...banks.values()].map((strings) => ({ strings })), metalOf: metal.find, midPoints };
}

export const batteriesOf = ({ strings }: Bank): BatteryBranch[] => strings.flatMap(({ batteries }) => batteries);

/** Amps a string delivers in a case; negative when it is charged. */
export const stringA = ({ batteries }: BatteryString, { point }: CaseResult): number => point.batteryA[batteries[0]!.index]!;

/** Amp-hours of a string: its smallest battery's. */
export const stringAh = ({ batteries }: BatteryString): number => Math.min(...batteries.map(({ capacityAh }) => capacityAh));

/** Continuous cases that have currents. */
export const continuousCases = ({ cases }: Study): CaseResult[] =>
	cases.filter(({ point, operatingCase }) => point.status === 'solved' && operatingCase.duration === 'continuous');

/** Continuous cases in which no battery of a bank is switched off. */
export const wholeCases = (study: Study, bank: Bank): CaseResult[] =>
	continuousCases(study).filter(({ operatingCase }) => batteriesOf(bank).every(({ part }) => operatingCase.levels[part] !== 0));

/** The case in which a figure is greatest; null when there is none, or it is never above zero. */
export function worstCase(
	cases: readonly CaseResult[],
	figure: (result: CaseResult) => number
): { result: CaseResult; value: number } | null {
	const worst = greatest(
		cases.map((result) => ({ result, value: figure(result) })),
		({ value }) => value
	);
	return worst && worst.value > 0 ? worst : null;
}

/** "Peak, no charging", or its id. */
export const caseName = ({ id, operatingCase }: CaseResult): string => operatingCase.label.trim() || id;
