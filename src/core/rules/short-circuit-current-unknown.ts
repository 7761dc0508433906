import { describe } from '#core/parts';
import { ampsText, ohmsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { breakingAmps, deviceKind, deviceNames, devicesOf, isUnverified, type DeviceBranch } from './device-limits.ts';
import { greatest, least } from './extremes.ts';
import { numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { listed, partName } from './words.ts';

interface Data {
	readonly names: string;
	readonly one: boolean;
	readonly eachA: number;
}

interface Close extends Data {
	readonly device: string;
	readonly kind: string;
	readonly breakingA: number;
	readonly faultA: number;
}

interface Doubtful {
	readonly name: string;
	readonly givenMilliohm: number;
	readonly usualMilliohm: number;
	readonly givenA: number;
}

const GIVEN = 'faultResistanceMilliohm';

/** No battery of a kind has so many times the resistance of another: common practice, no source. */
const DOUBTFUL_TIMES = 3;

/** An estimate may be off by so much: common practice, no source. */
const OFF_BY = 2;

const says = ({ names, one, eachA }: Data): string =>
	`The short-circuit current of ${names} is not given: breaking capacities were checked against an estimate, ${ampsText(eachA)}${one ? '' : ' each'} at most, from chemistry and capacity.`;

const REMEDY =
	'Enter the resistance into a short from the data sheet, or work it out: open-circuit voltage divided by the short-circuit current given there.';

export const shortCircuitCurrentUnknown = defineRule({
	meta: {
		id: 'short-circuit-current-unknown',
		title: 'The short-circuit current of every battery is known',
		severity: 'note',
		group: 'batteries',
		why: 'Whether a fuse can break a dead short depends on what the battery can give. Two batteries of one size may differ by a factor of two.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		doubtful: ({ name, givenMilliohm, usualMilliohm, givenA }: Doubtful) => ({
			message: `The resistance of ${name} into a short is given as ${ohmsText(givenMilliohm / 1000)}, a dead short at its posts as ${ampsText(givenA)}; batteries of its kind have about ${ohmsText(usualMilliohm / 1000)}.`,
			remedy: 'Compare it with the data sheet: the resistance in use, with its electronics, is greater and counts for nothing in a short.'
		}),
		estimated: (data: Data) => ({ message: says(data), remedy: REMEDY }),
		close: (data: Close) => ({
			message: `${says(data)} ${data.device} (${data.kind}) breaks ${ampsText(data.breakingA)} and would see ${ampsText(data.faultA)}: twice that would be too much for it.`,
			remedy: REMEDY
		})
	},

	/** One report for all batteries that are not known, one for each that is doubtful; graver where an estimate too low by half would hide a fuse that bursts. */
	*check(study) {
		for (const { part, faultEmfV, faultResistanceOhm } of study.form.batteries) {
			const usualOhm = usualFaultOhm(study, part);
			if (usualOhm === null || !exceeds(faultResistanceOhm, DOUBTFUL_TIMES * usualOhm)) continue;
			yield {
				message: 'doubtful',
				severity: 'warning',
				data: {
					name: partName(study.part(part)),
					givenMilliohm: 1000 * faultResistanceOhm,
					usualMilliohm: 1000 * usualOhm,
					givenA: faultEmfV / faultResistanceOhm
				},
				at: [partSubject(part)]
			};
		}
		const unknown = study.form.batteries.filter(({ part }) => numberOf(study.part(part), GIVEN) === null);
		const judged = devicesOf(study).flatMap((branch) => judge(study, branch) ?? []);
		if (unknown.length === 0 || judged.length === 0) return;
		const parts = [...new Set(unknown.map(({ part }) => part))];
		const strongest = greatest(
			unknown.map(({ faultEmfV, faultResistanceOhm }) => faultEmfV / faultResistanceOhm),
			(amps) => amps
		)!;
		const data = { names: listed(parts.map((id) => partName(study.part(id)))), one: parts.length === 1, eachA: strongest };
		const room = judged.filter(({ faultA, breaking }) => !exceeds(faultA, breaking.value) && exceeds(OFF_BY * faultA, breaking.value));
		const nearest = least(room, ({ faultA, breaking }) => breaking.value / faultA);
		if (!nearest) {
			yield { message: 'estimated', data, at: subjects(parts.map(partSubject)) };
			return;
		}
		const { branch, faultA, breaking } = nearest;
		yield {
			message: 'close',
			severity: 'warning',
			data: { ...data, device: deviceNames(study, [branch]), kind: deviceKind(branch.device), breakingA: breaking.value, faultA },
			at: subjects([...parts, branch.origin.part].map(partSubject)),
			unverified: isUnverified(breaking)
		};
	}
});

function judge(study: Study, branch: DeviceBranch) {
	const fault = study.faults.throughDevice(branch);
	const breaking = breakingAmps(branch.device, fault.openV);
	return fault.currentA > 0 && breaking !== null ? { branch, faultA: fault.currentA, breaking } : null;
}

/** What its kind and capacity would give; null for a battery whose resistance is not given. */
function usualFaultOhm({ diagram }: Study, id: string): number | null {
	const part = diagram.parts[id]!;
	if (typeof part.params[GIVEN] !== 'number') return null;
	const link = describe({ ...part, params: { ...part.params, [GIVEN]: null } }).links.find(({ kind }) => kind === 'battery');
	return link?.kind === 'battery' ? link.faultResistanceOhm : null;
}
