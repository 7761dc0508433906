import { deviceName } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { loadsByDevice } from './load-feed.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const criticalCircuitSharesFuse = defineRule({
	meta: {
		id: 'critical-circuit-shares-fuse',
		title: 'A critical circuit has a fuse of its own',
		severity: 'warning',
		group: 'protection',
		why: 'A fault in a deck lamp must not put out the navigation lights or stop the bilge pump.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		shared: ({ device, critical, others, one }: { device: string; critical: string; others: string; one: boolean }) => ({
			message: `${capital(device)} feeds ${critical}, ${one ? 'a critical circuit' : 'critical circuits'}, together with ${others}: a fault in one puts out both.`,
			remedy: `Give ${critical} ${one ? 'a fuse of its own' : 'fuses of their own'}.`
		})
	},

	/** One report for each fuse or breaker that is the least on the way to critical loads and to others. */
	*check(study) {
		for (const { device, loads } of loadsByDevice(study).values()) {
			const critical = loads.filter(({ critical }) => critical);
			const others = loads.filter(({ critical }) => !critical);
			if (critical.length === 0 || others.length === 0) continue;
			const names = (list: typeof loads) => listed([...new Set(list.map(({ part }) => partName(study.part(part))))]);
			yield {
				message: 'shared',
				data: { device: deviceName(study, device), critical: names(critical), others: names(others), one: critical.length === 1 },
				at: subjects([device.part, ...[...critical, ...others].map(({ part }) => part)].map(partSubject))
			};
		}
	}
});
