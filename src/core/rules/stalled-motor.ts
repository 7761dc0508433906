import { openingAt } from '#core/faults';
import { ofSameForm, type LoadBranch } from '#core/network';
import { solveCase } from '#core/solver';
import { ampsText } from '#core/units';
import { deviceName, exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { secondsText } from './fault-words.ts';
import { feedOf } from './load-feed.ts';
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
			const currentA = WARM * stalledA(study, load, stallA, numberOf(view, 'stallV') ?? study.diagram.system.nominalV);
			const name = partName(view);
			const limitedBy = feedOf(study, load)?.letThrough.limitedBy ?? [];
			const [own] = limitedBy;
			const index = own && limitedBy.length === 1 ? study.network.branchOfLink.get(`${own.part}.${own.link}`) : undefined;
			const device = index === undefined ? null : study.network.branches[index]!.device;
			const severity = isSet(view, 'unattended') ? 'error' : 'warning';
			if (!device || !own) {
				const data = { name, stallA: currentA, device: '', ratingA: 0, latestS: null };
				yield { message: 'none', severity, data, at: [partSubject(load.part)] };
				continue;
			}
			const opening = openingAt(device, currentA);
			const isBelow = exceeds(LEAST_TIMES * device.ratingA, currentA);
			const latestS = opening?.latestS ?? null;
			if (!isBelow && (latestS === null || latestS <= MOST_S)) continue;
			const data = { name, stallA: currentA, device: deviceName(study, own), ratingA: device.ratingA, latestS };
			yield {
				message: isBelow || latestS === Infinity ? 'never' : 'late',
				severity,
				data: { ...data, latestS: Number.isFinite(latestS) ? latestS : null },
				at: [partSubject(load.part), partSubject(own.part)],
				...(opening && { source: `common practice, no source; ${opening.source}`, unverified: true })
			};
		}
	}
});

/** Amps with the motor held fast, everything else off: a resistance behind its conductors, fuse and battery. */
function stalledA({ network }: Study, motor: LoadBranch, stallA: number, volts: number): number {
	const held = { ...motor, draw: { kind: 'resistance' as const, ohms: volts / stallA }, startTimes: 1 };
	const loads = network.loads.map((load) => (load === motor ? held : load));
	const point = solveCase(ofSameForm({ ...network, loads }, network), 'stalled', {
		label: '',
		order: 0,
		duration: 'continuous',
		loads: 0,
		sources: 0,
		levels: { [motor.part]: 1 }
	});
	return point.status === 'solved' ? point.loadA[motor.index]! : 0;
}
