import { isHardware } from '#core/studs';
import { defineRuleForEach } from './define.ts';
import { studSubject } from './subjects.ts';

export const washerInCurrentPath = defineRuleForEach('stacks', {
	meta: {
		id: 'washer-in-current-path',
		title: 'Washers and nuts lie above everything that carries current',
		severity: 'error',
		group: 'studs',
		why: 'A washer between two lugs puts its poor faces, or the stud itself, in the path of the current: the joint heats under full load.',
		source: { default: 'FAA AC 43.13-1B: no washer in the current path between terminals' }
	},

	messages: {
		between: ({ name, hardware, above }: { name: string; hardware: string; above: string }) => ({
			message: `On ${name} a ${hardware} lies under the ${above}.`,
			remedy: `Move the ${hardware} above the last terminal, directly under the nut.`
		}),
		nut: ({ name, above }: { name: string; above: string }) => ({
			message: `On ${name} a nut lies under the ${above}, so its current passes through thread and nut.`,
			remedy: 'Put all terminals under one nut, copper on copper.'
		})
	},

	/** One report for each stud, about the lowest offender. */
	*checkOne({ key, terminal, layers }, study) {
		if (terminal.kind !== 'stud') return;
		const lowest = layers.findIndex(({ item }) => isHardware(item));
		const above = layers.slice(lowest + 1).find(({ item }) => !isHardware(item));
		if (lowest < 0 || !above) return;
		const data = { name: study.studName(key), hardware: layers[lowest]!.label, above: above.label };
		if (layers[lowest]!.item.kind === 'nut') yield { message: 'nut', data, at: [studSubject(key)] };
		else yield { message: 'between', data, at: [studSubject(key)] };
	}
});
