import { gaugeText } from '#core/conductors';
import { metresText } from '#core/units';
import { alsoText, deviceName, lengthAssumptions, limitedByText } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { overcurrentFaults } from './overcurrent.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital } from './words.ts';

interface Data {
	readonly name: string;
	readonly gauge: string;
	readonly origin: string;
	readonly runM: number;
	readonly device: string;
	readonly allowedM: number;
	/** What feeds the unprotected length; null when nothing limits it. */
	readonly fedBy: string | null;
	readonly also: string;
	/** Length allowed in a sheath, where that would do. */
	readonly sheathedM: number | null;
}

export const protectionTooFar = defineRule({
	meta: {
		id: 'protection-too-far',
		title: 'The fuse or breaker sits at the source end of its conductor',
		severity: 'error',
		group: 'protection',
		why: 'A fuse protects only what lies beyond it. The length before it is as good as unfused.',
		source: {
			'us-small-craft': '33 CFR 183.455(b), 183.460(a)',
			default: 'common practice, no source'
		}
	},

	messages: {
		tooFar: ({ name, gauge, origin, runM, device, allowedM, fedBy, also, sheathedM }: Data) => ({
			message: `${capital(name)} (${gauge}) runs ${metresText(runM)} from ${origin} to ${device}, its first fuse or breaker; ${metresText(allowedM)} is allowed. On that length the current is limited ${fedBy === null ? 'by nothing' : `only by ${fedBy}`}.${also}`,
			remedy: `Move ${device} to within ${metresText(allowedM)} of ${origin}, measured along the conductor${sheathedM === null ? '' : `; sheathed over its whole length it may be ${metresText(sheathedM)} away`}.`
		})
	},

	*check(study) {
		for (const { kind, view, run, device, letThrough, alike } of overcurrentFaults(study)) {
			if (kind !== 'too-far' || device?.branch.origin.kind !== 'link') continue;
			const { sheathedM } = study.profile.overcurrent;
			const runM = run.upstreamM + device.lengthM;
			yield {
				message: 'tooFar',
				data: {
					name: view.name,
					gauge: gaugeText(view.conductor.gauge),
					origin: study.studName(run.origin),
					runM,
					device: deviceName(study, device.branch.origin),
					allowedM: run.allowed.value,
					fedBy: letThrough.currentA === Infinity ? null : limitedByText(study, letThrough),
					also: alsoText(study, alike),
					sheathedM: !run.fromBattery && run.allowed !== sheathedM && runM <= sheathedM.value ? sheathedM.value : null
				},
				at: subjects([conductorSubject(view.id), partSubject(device.branch.origin.part), ...alike.map(conductorSubject)]),
				source: run.allowed.source,
				unverified: run.allowed.confidence === 'memory',
				assumptions: lengthAssumptions([view, ...run.way.map(study.conductor)])
			};
		}
	}
});
