import { terminalRef } from '#core/diagram';
import { defineRuleForEach } from './define.ts';
import { conductorSubject, studSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

export const lugUnderFuse = defineRuleForEach('stacks', {
	meta: {
		id: 'lug-under-fuse',
		title: 'On a fuse block the lug lies above the fuse',
		severity: 'error',
		group: 'studs',
		why: 'The post is insulated so that current can reach it only through the fuse. A lug under the fuse touches the live side: it has no fuse at all.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		under: ({ names, one, block }: { names: string; one: boolean; block: string }) => ({
			message: `${capital(names)} ${one ? 'lies' : 'lie'} under the fuse of ${block} and ${one ? 'is' : 'are'} not protected by it.`,
			remedy: 'Put the fuse on the post first, then the lug, the washers and the nut.'
		})
	},

	*checkOne({ key, layers }, study) {
		const fuse = layers.findIndex(({ item }) => item.kind === 'fuse');
		const under = layers.slice(0, Math.max(fuse, 0)).flatMap(({ item }) => (item.kind === 'lug' ? [item.conductor] : []));
		const lugs = [...new Set(under)];
		if (lugs.length === 0) return;
		yield {
			message: 'under',
			data: {
				names: listed(lugs.map((id) => study.conductorName(id))),
				one: lugs.length === 1,
				block: partName(study.part(terminalRef(key).part))
			},
			at: subjects([studSubject(key), ...lugs.map(conductorSubject)])
		};
	}
});
