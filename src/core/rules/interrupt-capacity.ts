import { areaMm2, gaugeText } from '#core/conductors';
import { clearingDistanceM, type DeviceFault } from '#core/faults';
import { IACS_OHM_MM2_PER_M, type Sourced } from '#core/tables';
import { ampsText, metresText, voltsText } from '#core/units';
import { defineRule, type RuleMeta } from './define.ts';
import { breakingAmps, deviceKind, deviceNames, devicesOf, isUnverified, type DeviceBranch } from './device-limits.ts';
import { exceeds, sources } from './conductor-words.ts';
import { greatest } from './extremes.ts';
import { groupBy } from './group-by.ts';
import type { Study } from './study.ts';
import { partSubject, subjects } from './subjects.ts';
import { derived, gathered } from './watch.ts';
import { busMetal } from './wiring.ts';
import { capital, listed } from './words.ts';

interface Data {
	readonly names: string;
	readonly isOne: boolean;
	readonly kind: string;
	readonly breakingA: number;
	readonly faultA: number;
	readonly openV: number;
	/** " A short draws too much on the first 1.2 m of C5+ (8 AWG)."; empty where no conductor follows. */
	readonly distances: string;
}

interface Judged {
	readonly branch: DeviceBranch;
	readonly fault: DeviceFault;
	readonly breaking: Sourced<number> | null;
}

const BATTERIES = 'Resistance of batteries into a short, where not given, taken from chemistry and capacity.';

const says = ({ names, isOne, kind, breakingA, openV, faultA }: Data): string =>
	`${capital(names)} (${kind}) ${isOne ? 'breaks' : 'break'} up to ${ampsText(breakingA)} at ${voltsText(openV)}; a dead short right behind ${isOne ? 'it' : 'them'} draws ${ampsText(faultA)}.`;

const SOURCE = {
	'us-small-craft': '33 CFR 183 is silent; ABYC E-11, interrupting capacity',
	'abyc-e11': 'ABYC E-11, interrupting capacity',
	'rv-nec-552': 'NFPA 70 110.9',
	default: 'IEC 60364-4-43 434.5.1; NFPA 70 110.9'
} satisfies RuleMeta['source'];

export const interruptCapacity = defineRule({
	meta: {
		id: 'interrupt-capacity',
		title: 'A fuse or breaker can break the greatest short-circuit current where it sits',
		severity: 'error',
		group: 'protection',
		why: 'Above its breaking capacity a fuse can burst and go on arcing. A lithium or large lead-acid bank delivers many thousand amps into a short.',
		source: SOURCE
	},

	messages: {
		unbacked: (data: Data) => ({
			message: `${says(data)} Nothing between ${data.isOne ? 'it' : 'them'} and the batteries can break that.${data.distances}`,
			remedy: `Fit a type that breaks at least ${ampsText(data.faultA)} there, such as Class T or an industrial fuse, or put one that does between there and the batteries.`
		}),
		backed: (data: Data) => ({
			message: `${says(data)}${data.distances}`,
			remedy: `Fit a type that breaks at least ${ampsText(data.faultA)}, or insulate and enclose the first stretch so that no short can happen there. The fuses nearer to the batteries can break it; that they do so in time is not tested.`
		}),
		unknown: ({ names, isOne, faultA }: { names: string; isOne: boolean; faultA: number }) => ({
			message: `The breaking capacity of ${names} is not given; a dead short right behind ${isOne ? 'it' : 'them'} draws ${ampsText(faultA)}.`,
			remedy: 'Enter the breaking capacity printed on it for direct current, and compare.'
		})
	},

	*check(study) {
		const bus = busMetal(study);
		const posts = new Set(study.form.batteries.flatMap(({ positive, negative }) => [bus.find(positive), bus.find(negative)]));
		const reached = reachedFromBatteries(study);
		const isUnbacked = ({ fault }: Judged): boolean => reached.has(fault.from);

		const weak = weakDevices(study);
		// On battery posts one type is one cause; elsewhere one bus is.
		const place = ({ fault, branch }: Judged): string => {
			const at = bus.find(fault.from);
			return posts.has(at) ? `post ${deviceKind(branch.device)}` : `bus ${at}`;
		};
		for (const alike of groupBy(weak, (item) => `${isUnbacked(item)} ${place(item)}`).values()) {
			// The weakest for its place speaks for all.
			const worst = greatest(alike, ({ fault, breaking }) => fault.currentA / breaking!.value)!;
			const unbacked = isUnbacked(worst);
			yield {
				message: unbacked ? 'unbacked' : 'backed',
				severity: unbacked ? 'error' : 'warning',
				data: {
					names: deviceNames(
						study,
						alike.map(({ branch }) => branch)
					),
					isOne: alike.length === 1,
					kind: deviceKind(worst.branch.device),
					breakingA: worst.breaking!.value,
					faultA: worst.fault.currentA,
					openV: worst.fault.openV,
					distances: distancesText(study, alike)
				},
				at: subjects([...new Set(alike.map(({ branch }) => branch.origin.part))].map(partSubject)),
				source: sources(sourceFor(study), worst.breaking!.source),
				unverified: isUnverified(worst.breaking!),
				assumptions: [BATTERIES]
			};
		}

		for (const { branch, fault } of unknownDevices(study)) {
			yield {
				message: 'unknown',
				severity: 'note',
				data: { names: deviceNames(study, [branch]), isOne: true, faultA: fault.currentA },
				at: [partSubject(branch.origin.part)],
				assumptions: [BATTERIES]
			};
		}
	}
});

const sourceFor = ({ profile }: Study): string => (SOURCE as RuleMeta['source'])[profile.basedOn] ?? SOURCE.default;

const judged = gathered(devicesOf, (study, branch): readonly Judged[] => {
	const fault = study.faults.throughDevice(branch);
	// Where the voltage alone is too much for a fuse it has no breaking capacity to compare.
	const breaking = breakingAmps(branch.device, fault.openV);
	return fault.currentA > 0 && (breaking !== null || (branch.device.family === null && branch.device.breakingA === null))
		? [{ branch, fault, breaking }]
		: [];
});

// Lists of their own: most edits move the current through some device, and few make it too much for it.
const isWeak = ({ fault, breaking }: Judged): boolean => breaking !== null && exceeds(fault.currentA, breaking.value);
const weakDevices = derived((study): readonly Judged[] => judged(study).filter(isWeak));
const unknownDevices = derived((study): readonly Judged[] => judged(study).filter(({ breaking }) => breaking === null));
const ableDevices = derived((study): readonly number[] => judged(study).flatMap((item) => (isWeak(item) ? [] : [item.branch.index])));

/** Nodes a battery feeds without a device on the way that could break the short. */
const reachedFromBatteries = derived((study): ReadonlySet<number> => {
	const { form } = study;
	const able = new Set(ableDevices(study));
	const reached = new Set(form.batteries.map(({ positive }) => positive));
	for (const node of reached) {
		for (const index of form.branchesAt[node]!) {
			if (able.has(index)) continue;
			const { a, b } = form.branches[index]!;
			reached.add(a === node ? b : a);
		}
	}
	return reached;
});

/** A shorter stretch is not worth naming. */
const LEAST_M = 0.01;

/** How far along the conductors right behind the devices a short is still too much. */
function distancesText(study: Study, judged: readonly Judged[]): string {
	const found = judged.flatMap(({ branch, fault, breaking }) => {
		const far = branch.a === fault.from ? branch.b : branch.a;
		const conductors = study.form.branchesAt[far]!.flatMap((index) => {
			const { origin } = study.form.branches[index]!;
			return origin.kind === 'conductor' ? [study.conductor(origin.id)] : [];
		});
		return conductors.flatMap(({ name, conductor, lengthM }) => {
			const metres = clearingDistanceM(
				fault.openV,
				fault.sourceOhm,
				breaking!.value,
				(2 * IACS_OHM_MM2_PER_M.value) / areaMm2(conductor.gauge)
			);
			if (metres < LEAST_M) return [];
			const line = `${name} (${gaugeText(conductor.gauge)})`;
			return metres >= lengthM ? `all of ${line}` : `the first ${metresText(metres)} of ${line}`;
		});
	});
	return found.length === 0 ? '' : ` A short draws too much on ${listed(found)}.`;
}
