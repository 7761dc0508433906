import { ofSameForm } from '#core/network';
import { solveCase } from '#core/solver';
import { ampsText } from '#core/units';
import { banksOf, caseName, continuousCases, stringA, wholeCases, worstCase, type Bank, type BatteryString } from './banks.ts';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { stringName } from './string-paths-unequal.ts';
import type { CaseResult, Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

/** In series with a battery whose electronics have opened: a few microamps at 48 V. */
const OPEN_OHM = 1e7;

export const oneBatteryLost = defineRule({
	meta: {
		id: 'one-battery-lost',
		title: 'The other batteries carry the load when one drops out',
		severity: 'warning',
		group: 'batteries',
		why: 'Battery electronics open without warning. If the rest cannot carry the load, its fuses and electronics follow one after another, and all goes dark.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		overloaded: ({ lost, name, limits }: { lost: string; name: string; limits: string }) => ({
			message: `If ${lost} drops out in “${name}”, the rest is over its limits: ${limits}.`,
			remedy: 'Use larger strings and fuses, shed load, or lay down how much may be on with one battery out.'
		}),
		dark: ({ lost, name }: { lost: string; name: string }) => ({
			message: `If ${lost} drops out in “${name}”, the rest cannot hold the voltage up.`,
			remedy: 'Use larger batteries, shed load, or lay down how much may be on with one battery out.'
		})
	},

	/** One report for each bank that stays within its limits while it is whole: its heaviest case without its most loaded string. */
	*check(study) {
		const { banks, midPoints, metalOf } = banksOf(study);
		const isTapped = study.network.loads.some(
			({ positive, negative }) => midPoints.has(metalOf(positive)) || midPoints.has(metalOf(negative))
		);
		for (const bank of banks) {
			const whole = wholeCases(study, bank);
			// A case with a battery switched off says itself what may then be on. What hangs on a middle point goes with its battery.
			if (bank.strings.length < 2 || whole.length < continuousCases(study).length || isTapped) continue;
			const worst = worstCase(whole, (result) => bank.strings.reduce((sum, string) => sum + stringA(string, result), 0));
			if (!worst || overLimits(study, bank.strings, worst.result.point).length > 0) continue;
			const { result } = worst;
			const lost = bank.strings.reduce((a, b) => (exceeds(stringA(b, result), stringA(a, result)) ? b : a));
			const rest = bank.strings.filter((string) => string !== lost);
			const point = without(study, lost, result);
			const at = subjects([lost, ...rest].flatMap(({ batteries }) => batteries.map(({ part }) => partSubject(part))));
			const words = { lost: stringName(study, lost), name: caseName(result) };
			if (point.status !== 'solved') {
				yield { message: 'dark', data: words, at, caseId: result.id };
				continue;
			}
			const limits = overLimits(study, rest, point);
			if (limits.length > 0) yield { message: 'overloaded', data: { ...words, limits: capital(listed(limits)) }, at, caseId: result.id };
		}
	}
});

function without({ network }: Study, { batteries: lost }: BatteryString, { id, operatingCase }: CaseResult): CaseResult['point'] {
	const gone = new Set(lost.map(({ index }) => index));
	const batteries = network.batteries.map((battery) => (gone.has(battery.index) ? { ...battery, resistanceOhm: OPEN_OHM } : battery));
	return solveCase(ofSameForm({ ...network, batteries }, network), id, operatingCase);
}

/** "B1 255 A of 200 A", "FB1 255 A of 225 A": batteries and the devices of their own strings. */
function overLimits(study: Study, strings: Bank['strings'], point: CaseResult['point']): string[] {
	const overloaded = devicesOf(study).filter(({ index, device }) => exceeds(Math.abs(point.branchA[index]!), device.ratingA));
	return strings.flatMap((string) => {
		const currentA = point.batteryA[string.batteries[0]!.index]!;
		const limits = string.batteries.flatMap(({ continuousA }) => (continuousA === null ? [] : [continuousA]));
		const own = overloaded.flatMap(({ index, device, origin }) => {
			const throughA = Math.abs(point.branchA[index]!);
			// In series with the string: its whole current, and nothing else's.
			if (Math.abs(throughA - Math.abs(currentA)) > 1e-6 * Math.abs(currentA)) return [];
			return [`${deviceName(study, origin)} ${ampsText(throughA)} of ${ampsText(device.ratingA)}`];
		});
		const limitA = Math.min(...limits);
		const battery = exceeds(currentA, limitA) ? [`${stringName(study, string)} ${ampsText(currentA)} of ${ampsText(limitA)}`] : [];
		return [...battery, ...own];
	});
}
