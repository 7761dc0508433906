import { editConductors, editPart, nextLabel, type Command, type Diagram } from '#core/diagram';
import { listed } from '#core/rules';
import { applied } from './findings.ts';
import type { RemedyKind } from './types.ts';

/** A number nobody uses, with the letters the label has already; all but the first of those that share one get it. */
export const nextFreeLabel: RemedyKind = {
	rules: ['duplicate-label', 'missing-label'],

	*propose({ diagram }, { rule, subjects }) {
		const commands: Command[] = [];
		const labels: string[] = [];
		let current: Diagram = diagram;
		for (const { kind, id } of rule === 'duplicate-label' ? subjects.slice(1) : subjects) {
			if (kind !== 'conductor' && kind !== 'part') continue;
			const now = (kind === 'conductor' ? current.conductors : current.parts)[id]!.label.trim();
			const [, prefix = '', suffix = ''] = /^(.*?)\d*(\D*)$/su.exec(now) ?? [];
			const next = `${nextLabel(current, prefix || usualPrefix(diagram))}${suffix}`;
			const command =
				kind === 'conductor' ? editConductors({ conductors: [id], set: { label: next } }) : editPart({ part: id, set: { label: next } });
			commands.push(command);
			labels.push(next);
			current = applied(current, [command])!;
		}
		if (commands.length > 0) yield { title: `Label ${labels.length > 1 ? 'them' : 'it'} ${listed(labels)}`, commands };
	}
};

/** The letters most conductors have; "W" where none has any. */
function usualPrefix({ conductors }: Diagram): string {
	const uses = new Map<string, number>();
	for (const { label } of Object.values(conductors)) {
		const prefix = /^(\p{L}+)\d/u.exec(label.trim())?.[1];
		if (prefix) uses.set(prefix, (uses.get(prefix) ?? 0) + 1);
	}
	return [...uses].sort(([, a], [, b]) => b - a)[0]?.[0] ?? 'W';
}
