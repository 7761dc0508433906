import { defineRule } from './define.ts';
import { isIn, isSet } from './params.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

/** What opens, closes, melts or turns. A battery’s own place is another rule’s. */
const SPARKS = new Set(['switch', 'protective', 'load', 'source']);

export const ignitionSource = defineRule({
	meta: {
		id: 'ignition-source',
		title: 'Nothing that may spark stands where petrol or gas gathers',
		severity: 'error',
		group: 'protection',
		why: 'A contact that opens, a fuse that melts or a motor’s brushes light the vapour that a small leak leaves in the bilge or locker.',
		source: { 'us-small-craft': '33 CFR 183.410', default: '33 CFR 183.410 (petrol), applied as common practice' }
	},

	messages: {
		unprotected: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'stands' : 'stand'} where petrol or gas may gather and ${one ? 'is' : 'are'} not ignition protected.`,
			remedy: `Move ${one ? 'it' : 'them'} out of that space, or use ${one ? 'one' : 'ones'} marked as ignition protected.`
		})
	},

	/** One report for all of them. */
	*check(study) {
		const bare = study.parts.filter(
			(part) => part.links.some(({ kind }) => SPARKS.has(kind)) && !isSet(part, 'ignitionProtected') && isIn(study, part.id, 'fuel')
		);
		if (bare.length === 0) return;
		yield {
			message: 'unprotected',
			data: { names: listed(bare.map(partName)), one: bare.length === 1 },
			at: subjects(bare.map(({ id }) => partSubject(id)))
		};
	}
});
