import { openingAt } from '#core/faults';
import { ampsText, compactNumber } from '#core/units';
import { secondsText } from './fault-words.ts';
import { deviceName } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { greatest } from './extremes.ts';
import { loadsByDevice } from './load-feed.ts';
import { numberOf } from './params.ts';
import type { Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

interface Data {
	readonly device: string;
	readonly ratingA: number;
	readonly load: string;
	readonly startA: number;
	readonly startS: number;
	readonly earliestS: number;
}

export const fuseOpensOnStart = defineRule({
	meta: {
		id: 'fuse-opens-on-start',
		title: 'A fuse holds while what it feeds starts',
		severity: 'warning',
		group: 'protection',
		why: 'A fuse that opens at some starts is replaced by a larger one on the third night, and then protects nothing.',
		source: { default: 'the times of the fuse’s type; common practice' }
	},

	messages: {
		opens: ({ device, ratingA, load, startA, startS, earliestS }: Data) => ({
			message: `${capital(device)} (${ampsText(ratingA)}) may open after ${secondsText(earliestS)} at the ${ampsText(startA)} that ${load} draws for ${compactNumber(startS)} s while it starts.`,
			remedy: 'Fit the next larger or a slower fuse, as far as the conductors allow, or thicker conductors with it.'
		})
	},

	/** Devices that feed one starting load, with the others they feed at their rated draw. */
	*check(study) {
		for (const { device, loads } of loadsByDevice(study).values()) {
			const protective = study.form.branches[study.form.branchOfLink.get(`${device.part}.${device.link}`)!]!.device;
			if (!protective) continue;
			const running = loads.map((load) => ratedA(study, load));
			const opened = loads.flatMap((load, index) => {
				const [times, seconds] = [load.startTimes ?? 1, numberOf(study.part(load.part), 'startS')];
				if (times <= 1 || seconds === null) return [];
				const startA = running.reduce((sum, amps, other) => sum + amps * (other === index ? times : 1), 0);
				const opening = openingAt(protective, startA);
				return opening && opening.earliestS < seconds ? [{ load, startA, startS: seconds, opening }] : [];
			});
			const worst = greatest(opened, ({ startA }) => startA);
			if (!worst) continue;
			yield {
				message: 'opens',
				data: {
					device: deviceName(study, device),
					ratingA: protective.ratingA,
					load: partName(study.part(worst.load.part)),
					startA: worst.startA,
					startS: worst.startS,
					earliestS: worst.opening.earliestS
				},
				at: [partSubject(device.part), partSubject(worst.load.part)],
				source: worst.opening.source,
				unverified: true
			};
		}
	}
});

/** Amps at the rated draw and the volts the load has with nothing on. */
function ratedA({ atRest, diagram }: Study, { draw, index }: Study['form']['loads'][number]): number {
	if (draw.kind === 'current') return draw.amps;
	const volts = (atRest.status === 'solved' && Math.abs(atRest.loadV[index]!)) || diagram.system.nominalV;
	return draw.kind === 'power' ? draw.watts / volts : volts / draw.ohms;
}
