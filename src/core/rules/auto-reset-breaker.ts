import { deviceName } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { devicesOf } from './device-limits.ts';
import { partSubject } from './subjects.ts';
import { capital } from './words.ts';

export const autoResetBreaker = defineRule({
	meta: {
		id: 'auto-reset-breaker',
		title: 'A breaker on a boat is reset by hand and cannot be held closed',
		severity: 'error',
		group: 'protection',
		why: 'A breaker that closes again by itself feeds the fault over and over, until something burns.',
		source: { default: '33 CFR 183.455(a)' }
	},

	messages: {
		automatic: ({ name }: { name: string }) => ({
			message: `${capital(name)} closes again by itself after it has opened.`,
			remedy: 'Use a breaker with reset by hand, trip-free, or a fuse.'
		})
	},

	*check(study) {
		if (study.diagram.system.craft !== 'boat' && study.profile.basedOn !== 'us-small-craft') return;
		for (const { device, origin } of devicesOf(study)) {
			if (!device.resetsItself) continue;
			yield { message: 'automatic', data: { name: deviceName(study, origin) }, at: [partSubject(origin.part)] };
		}
	}
});
