import { openingAt } from '#core/faults';
import type { LoadBranch } from '#core/network';
import { solveCase } from '#core/solver';
import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf, type DeviceBranch } from './device-limits.ts';
import { least } from './extremes.ts';
import { secondsText } from './fault-words.ts';
import { isSet, numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

/** A winding grows warm while it stalls, and its current falls to this share: common practice, no source. */
const WARM = 0.8;
/** A stalled motor is to be off within this time: common practice, no source. */
const MOST_S = 60;
/** Below this multiple of its rating a device need not open at all: common practice, no source. */
const LEAST_TIMES = 1.6;

/** A device that carries this share of the motor's current is in series with it; the rest is rounding. */
const SERIES = 0.999;

interface Data {
	readonly name: string;
	readonly stallA: number;
	readonly device: string;
	readonly ratingA: number;
	readonly latestS: number | null;
}

export const stalledMotor = defineRule({
	meta: {
		id: 'stalled-motor',
		title: 'The fuse of a motor opens when the motor stalls',
		severity: 'warning',
		group: 'protection',
		why: 'A pump jammed by a rag draws several times its current and moves no water to cool it: it burns, unless its fuse opens first.',
		source: { default: 'common practice, no source; the times of the fuse’s type' }
	},

	messages: {
		never: ({ name, stallA, device, ratingA }: Data) => ({
			message: `Stalled and warm, ${name} draws ${ampsText(stallA)}; ${device} (${ampsText(ratingA)}) need not open at that.`,
			remedy: 'Fit a smaller fuse, by the motor’s instructions; a thicker conductor raises the stalled current.'
		}),
		late: ({ name, stallA, device, ratingA, latestS }: Data) => ({
			message: `Stalled and warm, ${name} draws ${ampsText(stallA)}; ${device} (${ampsText(ratingA)}) may take ${secondsText(latestS ?? 0)}, and ${secondsText(MOST_S)} is the most a motor bears.`,
			remedy: 'Fit a smaller or faster fuse; a thicker conductor raises the stalled current.'
		}),
		none: ({ name, stallA }: Data) => ({
			message: `Stalled and warm, ${name} draws ${ampsText(stallA)}, and no single fuse or breaker of its own ends it.`,
			remedy: 'Give it a fuse of its own, by its instructions.'
		})
	},

	*check(study) {
		for (const load of study.network.loads) {
			const view = study.part(load.part);
			const stallA = numberOf(view, 'stallA');
			if (stallA === null) continue;
			const stalled = whileStalled(study, load, stallA, numberOf(view, 'stallV') ?? study.diagram.system.nominalV);
			const name = partName(view);
			const severity = isSet(view, 'unattended') ? 'error' : 'warning';
			const judged = stalled.devices.map((branch) => judge(branch, stalled.currentA));
			if (judged.some(({ isLate }) => !isLate)) continue;
			if (judged.length === 0) {
				const data = { name, stallA: stalled.currentA, device: '', ratingA: 0, latestS: null };
				yield { message: 'none', severity, data, at: [partSubject(load.part)] };
				continue;
			}
			const { branch, latestS, opening } = least(judged, (item) => item.latestS)!;
			const { ratingA } = branch.device;
			yield {
				message: latestS === Infinity ? 'never' : 'late',
				severity,
				data: {
					name,
					stallA: stalled.currentA,
					device: deviceName(study, branch.origin),
					ratingA,
					latestS: latestS === Infinity ? null : latestS
				},
				at: [partSubject(load.part), partSubject(branch.origin.part)],
				...(opening && { source: `common practice, no source; ${opening.source}`, unverified: true })
			};
		}
	}
});

/** Whether a device ends it in time, and when at the latest; Infinity where it need not open at all. */
function judge(branch: DeviceBranch, currentA: number) {
	const opening = openingAt(branch.device, currentA);
	const isBelow = exceeds(LEAST_TIMES * branch.device.ratingA, currentA);
	// Of a device of unknown curve no more is asked than that it be passed clearly.
	const latestS = isBelow ? Infinity : (opening?.latestS ?? 0);
	return { branch, opening, latestS, isLate: exceeds(latestS, MOST_S) };
}

/**
 * With the motor held fast, everything else off: a resistance behind its conductors, fuses and battery. The devices
 * are those in series with it, smallest first: any of them may end it.
 */
function whileStalled(study: Study, motor: LoadBranch, stallA: number, volts: number) {
	const { network } = study;
	const held = { ...motor, draw: { kind: 'resistance' as const, ohms: volts / stallA }, startTimes: 1 };
	const loads = network.loads.map((load) => (load === motor ? held : load));
	// Not of the same form: the motor is a resistance now.
	const point = solveCase({ ...network, loads }, 'stalled', {
		label: '',
		order: 0,
		duration: 'continuous',
		loads: 0,
		sources: 0,
		levels: { [motor.part]: 1 }
	});
	if (point.status !== 'solved') return { currentA: 0, devices: [] };
	const drawnA = point.loadA[motor.index]!;
	const devices = devicesOf(study)
		.filter(({ index }) => exceeds(Math.abs(point.branchA[index]!), SERIES * drawnA))
		.toSorted((a, b) => a.device.ratingA - b.device.ratingA);
	return { currentA: WARM * drawnA, devices: drawnA > 0 ? devices : [] };
}
