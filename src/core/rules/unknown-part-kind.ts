import { defineRule } from './define.ts';
import { groupBy } from './group-by.ts';
import { partSubject, subjects } from './subjects.ts';
import { capital, listed } from './words.ts';

export const unknownPartKind = defineRule({
	meta: {
		id: 'unknown-part-kind',
		title: 'Every part is of a kind this version knows',
		severity: 'warning',
		group: 'topology',
		why: 'A part of unknown kind is kept in the file and left out of every check, and so are the conductors that end on it.',
		source: { default: 'this program: it has no definition for the kind' }
	},

	messages: {
		unknown: ({ names, kind }: { names: string; kind: string }) => ({
			message: `${capital(names)} of kind “${kind}” cannot be checked: this version has no such kind of part.`,
			remedy: 'Open the file with a newer version, or replace the part by one from the shelf.'
		})
	},

	*check({ diagram, parts }) {
		const byKind = groupBy(
			parts.filter(({ definition }) => definition === null),
			({ id }) => diagram.parts[id]!.kind
		);
		for (const [kind, unknown] of byKind) {
			yield {
				message: 'unknown',
				data: { names: listed(unknown.map(({ label, id }) => label.trim() || id)), kind },
				at: subjects(unknown.map(({ id }) => partSubject(id)))
			};
		}
	}
});
