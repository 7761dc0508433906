import type { ConductorId, PartId, StudKey } from '#core/diagram';
import type { Subject } from './finding.ts';

export const partSubject = (id: PartId): Subject => ({ kind: 'part', id });
export const conductorSubject = (id: ConductorId): Subject => ({ kind: 'conductor', id });
export const studSubject = (id: StudKey): Subject => ({ kind: 'stud', id });
export const WHOLE_DIAGRAM: Subject = { kind: 'diagram', id: '' };

/** Subjects of a report, which has at least one. */
export function subjects(list: readonly Subject[]): [Subject, ...Subject[]] {
	const [first, ...rest] = list;
	if (!first) throw new Error('A report needs a subject.');
	return [first, ...rest];
}
