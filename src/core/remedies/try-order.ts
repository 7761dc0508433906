/** An order on a stud, tried on a copy: what flows through it then, and which findings it brings and clears. */
import { reorderStack, type Diagram, type StackItem, type StudKey } from '#core/diagram';
import { RULES, stackCurrents, type Finding } from '#core/rules';
import { bestOrder, stackOf, type Arrangement, type TerminalCurrents } from '#core/studs';
import { applied, difference, findingsOf, studyOf } from './findings.ts';
import type { Difference } from './types.ts';

/** Plain data: it crosses from the worker. */
export interface StudTrial {
	/** Layers are those of the stud with this order. */
	readonly currents: TerminalCurrents;
	/** About this stud or a block on it, in that order. */
	readonly findings: readonly Finding[];
	/** Against the diagram as it is; null where it is tried as it is. */
	readonly difference: Difference | null;
}

/** Null where nothing sits on the stud, or the order is refused. */
export function tryOrder(diagram: Diagram, stud: StudKey, order: readonly StackItem[] | null): StudTrial | null {
	const tried = order === null ? diagram : applied(diagram, [reorderStack({ stud, stack: [...order] })]);
	const stack = tried && stackOf(tried, stud);
	if (!stack) return null;
	const { layers, byCase } = stackCurrents(studyOf(tried), stack);
	const findings = findingsOf(tried);
	const blocks = new Set(stack.layers.flatMap(({ item }) => (item.kind === 'block' ? [item.block] : [])));
	return {
		currents: { layers, byCase },
		findings: findings.filter(({ rule, subjects }) =>
			subjects.some(({ kind, id }) => (kind === 'stud' ? id === stud : kind === 'part' && blocks.has(id) && ABOUT_STUDS.has(rule)))
		),
		difference: order === null ? null : difference(findingsOf(diagram), findings)
	};
}

const ABOUT_STUDS = new Set(RULES.filter(({ meta }) => meta.group === 'studs').map(({ meta }) => meta.id));

export interface StudArrangement {
	readonly best: Arrangement;
	/** The stud as it is. */
	readonly before: StudTrial;
	/** In its best order; null where that is how it is. */
	readonly after: StudTrial | null;
}

/** The best legal order of a stud; null where nothing is stacked there. */
export function arrangementOf(diagram: Diagram, stud: StudKey): StudArrangement | null {
	const study = studyOf(diagram);
	const stack = study.stack(stud);
	const before = tryOrder(diagram, stud, null);
	if (!stack || !before || stack.terminal.thread === null) return null;
	const best = bestOrder(diagram, stack, stackCurrents(study, stack));
	return { best, before, after: best.changes ? tryOrder(diagram, stud, best.order) : null };
}
