import { defineRule } from './define.ts';
import type { Subject } from './finding.ts';
import { groupBy } from './group-by.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { derived } from './watch.ts';

export const duplicateLabel = defineRule({
	meta: {
		id: 'duplicate-label',
		title: 'A label names one conductor or one part',
		severity: 'error',
		group: 'documents',
		why: 'Whoever works on the system later trusts the label: two things of one name get the wrong one disconnected or fused.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		twice: ({ label, count, noun }: { label: string; count: number; noun: string }) => ({
			message: `The label ${label} is on ${count} ${noun}.`,
			remedy: `Give each of the ${noun} a label of its own.`
		}),
		alike: ({ labels, noun }: { labels: string; noun: string }) => ({
			message: `The labels ${labels} of ${noun} cannot be told apart when printed.`,
			remedy: 'Change one of them: capital O and 0, capital I and 1, upper and lower case look alike on a label.'
		})
	},

	*check(study) {
		yield* repeated(labelsOfConductors(study), conductorSubject, 'conductors');
		yield* repeated(labelsOfParts(study), partSubject, 'parts');
	}
});

/** Ids, each followed by its label: the same list for as long as nothing is renamed. */
const labelsOfConductors = derived(({ diagram }): readonly string[] => labelsIn(diagram.conductors));
const labelsOfParts = derived(({ diagram }): readonly string[] => labelsIn(diagram.parts));
const labelsIn = (record: Readonly<Record<string, { readonly label: string }>>): string[] =>
	Object.entries(record).flatMap(([id, { label }]) => (label.trim() === '' ? [] : [id, label]));

function* repeated(labels: readonly string[], subject: (id: string) => Subject, noun: string) {
	const labelled = labels.flatMap((id, i) => (i % 2 === 0 ? [[id, { label: labels[i + 1]! }] as const] : []));
	for (const group of groupBy(labelled, ([, { label }]) => folded(label)).values()) {
		if (group.length < 2) continue;
		const at = subjects(group.map(([id]) => subject(id)));
		const spellings = [...new Set(group.map(([, { label }]) => label.trim()))];
		if (spellings.length === 1) yield { message: 'twice' as const, data: { label: `“${spellings[0]!}”`, count: group.length, noun }, at };
		else yield { message: 'alike' as const, data: { labels: spellings.map((s) => `“${s}”`).join(' and '), noun }, at };
	}
}

/** What a reader of a worn label can tell apart. */
const folded = (label: string): string =>
	label.normalize('NFKC').trim().replace(/\s+/g, ' ').toUpperCase().replaceAll('O', '0').replaceAll('I', '1');
