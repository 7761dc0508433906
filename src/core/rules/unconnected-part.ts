import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
import { wiredParts } from './wiring.ts';
import { capital, listed, partName } from './words.ts';

export const unconnectedPart = defineRule({
	meta: {
		id: 'unconnected-part',
		title: 'Every part on the drawing is connected',
		severity: 'note',
		group: 'topology',
		why: 'A part without a conductor takes no part in the system and in the check.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		unconnected: ({ names, one }: { names: string; one: boolean }) => ({
			message: `${capital(names)} ${one ? 'has' : 'have'} nothing connected.`,
			remedy: `Draw the conductors of ${one ? 'this part' : 'these parts'}, or remove ${one ? 'it' : 'them'}.`
		})
	},

	/** One note for all of them: a drawing in progress has many. */
	*check(study) {
		const connected = wiredParts(study);
		const loose = study.parts.filter(({ id, terminals }) => terminals.length > 0 && !connected.has(id));
		if (loose.length === 0) return;
		yield {
			message: 'unconnected',
			data: { names: listed(loose.map(partName)), one: loose.length === 1 },
			at: subjects(loose.map(({ id }) => partSubject(id)))
		};
	}
});
