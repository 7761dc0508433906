import { deviceName } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { partSubject } from './subjects.ts';
import { capital } from './words.ts';

export const fuseInNegative = defineRule({
	meta: {
		id: 'fuse-in-negative',
		title: 'Fuses and breakers sit in the positive',
		severity: 'error',
		group: 'protection',
		why: 'With the negative bonded, a fault from the positive to metalwork passes by a fuse in the negative; and when that fuse opens, everything behind it is still live.',
		source: { default: '46 CFR 120.380(b)' }
	},

	messages: {
		bonded: ({ name, kind }: { name: string; kind: string }) => ({
			message: `${capital(name)} is a ${kind} in the negative, which is bonded here.`,
			remedy: 'Move it to the positive, at the source end of its circuit.'
		}),
		insulated: ({ name, kind }: { name: string; kind: string }) => ({
			message: `${capital(name)} is a ${kind} in the negative. When it opens, its circuit is still live.`,
			remedy: 'Move it to the positive, or use a breaker that opens both poles together.'
		})
	},

	*check(study) {
		const isBonded = study.diagram.system.negative === 'bonded';
		for (const { a, device, origin } of devicesOf(study)) {
			if (study.form.poles[a] !== 'negative') continue;
			yield {
				message: isBonded ? 'bonded' : 'insulated',
				severity: isBonded ? 'error' : 'warning',
				source: isBonded ? '46 CFR 120.380(b)' : 'common practice, no source',
				data: { name: deviceName(study, origin), kind: device.kind },
				at: [partSubject(origin.part)]
			};
		}
	}
});
