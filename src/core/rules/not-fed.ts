import { studKey } from '#core/diagram';
import { defineRule } from './define.ts';
import { standing } from './load-poles.ts';
import { partSubject, subjects } from './subjects.ts';
import { wiredStuds } from './wiring.ts';
import { capital, listed, partName } from './words.ts';

export const notFed = defineRule({
	meta: {
		id: 'not-fed',
		title: 'Every load is fed from the positive pole',
		severity: 'warning',
		group: 'topology',
		why: 'A load without a feed does not work; more often than not a conductor was forgotten, or a fuse is not fitted.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		open: ({ names, one }: { names: string; one: boolean }) => ({
			message: `Nothing leads from a source to the positive of ${names}, even with every switch closed.`,
			remedy: `Connect ${one ? 'it' : 'them'} to a fused position, or fit the fuse that is missing on the way.`
		}),
		bothNegative: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'has' : 'have'} both terminals on the negative pole.`,
			remedy: 'Move the positive conductor to a fused position.'
		})
	},

	/** One report for all loads that hang on the same unfed metal. A load with nothing connected is not finished. */
	*check(study) {
		const { form, nets } = study;
		if ([...form.batteries, ...form.sources].length === 0) return;
		const wired = wiredStuds(study);
		const isWired = (part: string) => study.part(part).terminals.some(({ id }) => wired.has(studKey({ part, terminal: id })));

		const groups = new Map<string, { message: 'open' | 'bothNegative'; parts: Set<string> }>();
		for (const load of form.loads) {
			const stands = standing(study, load);
			if ((stands !== 'both-negative' && stands !== 'not-fed' && stands !== 'open') || !isWired(load.part)) continue;
			const message = stands === 'both-negative' ? 'bothNegative' : 'open';
			const key = `${message} ${nets.of(load.positive)}`;
			const group = groups.get(key) ?? { message, parts: new Set() };
			group.parts.add(load.part);
			groups.set(key, group);
		}
		for (const { message, parts } of groups.values()) {
			const names = listed([...parts].map((id) => partName(study.part(id))));
			yield { message, data: { names, one: parts.size === 1 }, at: subjects([...parts].map(partSubject)) };
		}
	}
});
