import { studKey, terminalRef } from '#core/diagram';
import { defineRule } from './define.ts';
import { partSubject, subjects } from './subjects.ts';
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
	*check({ diagram, parts }) {
		const ends = Object.values(diagram.conductors).flatMap(({ from, to }) => [studKey(from), studKey(to)]);
		const mounts = Object.entries(diagram.mounts).flatMap(([block, stud]) => [block, stud.part]);
		const connected = new Set([...ends.map((key) => terminalRef(key).part), ...mounts]);
		const loose = parts.filter(({ id, terminals }) => terminals.length > 0 && !connected.has(id));
		if (loose.length === 0) return;
		yield {
			message: 'unconnected',
			data: { names: listed(loose.map(partName)), one: loose.length === 1 },
			at: subjects(loose.map(({ id }) => partSubject(id)))
		};
	}
});
