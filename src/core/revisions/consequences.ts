import { checkDiagram, type CheckResult, type ConductorFigures } from '#core/check';
import type { ConductorId, Content, StudKey } from '#core/diagram';
import type { Finding } from '#core/rules';
import { asDiagram } from './as-diagram.ts';
import type { DrawingChange } from './change.ts';

/** A figure of a conductor that moved by more than a twentieth. */
export interface MovedFigure {
	readonly conductor: ConductorId;
	readonly figure: 'continuousA' | 'dropV' | 'letThroughA' | 'faultA';
	readonly before: number;
	readonly after: number;
}

/** What the changes do to the checks. */
export interface Consequences {
	readonly appeared: readonly Finding[];
	readonly gone: readonly Finding[];
	readonly moved: readonly MovedFigure[];
	/** Studs to tighten and conductors to test again, since something on them changed. */
	readonly retest: { readonly studs: readonly StudKey[]; readonly conductors: readonly ConductorId[] };
}

const MOVED_BEYOND = 0.05;
const FIGURES = ['continuousA', 'dropV', 'letThroughA', 'faultA'] as const satisfies readonly (keyof ConductorFigures)[];

export function consequencesOf(before: Content, after: Content, changes: readonly DrawingChange[]): Consequences {
	const [old, now] = [checkDiagram(asDiagram(before)), checkDiagram(asDiagram(after))];
	const without = (findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] => {
		const keys = new Set(others.map(({ key }) => key));
		return findings.filter(({ key }) => !keys.has(key));
	};
	return {
		appeared: without(now.findings, old.findings),
		gone: without(old.findings, now.findings),
		moved: movedFigures(old, now),
		retest: retestOf(changes)
	};
}

/** What the changes oblige to do again. */
export function retestOf(changes: readonly DrawingChange[]): Consequences['retest'] {
	const electrical = changes.filter(({ sort, how }) => sort === 'electrical' && how !== 'removed');
	const of = (kind: 'stud' | 'conductor'): string[] => [
		...new Set(electrical.filter(({ subject }) => subject.kind === kind).map(({ subject }) => subject.id))
	];
	return { studs: of('stud'), conductors: of('conductor') };
}

function movedFigures(old: CheckResult, now: CheckResult): readonly MovedFigure[] {
	return Object.keys(now.conductors).flatMap((conductor) => {
		const [was, is] = [old.conductors[conductor], now.conductors[conductor]!];
		if (!was) return [];
		return FIGURES.flatMap((figure): readonly MovedFigure[] => {
			const [a, b] = [was[figure] ?? 0, is[figure] ?? 0];
			const isMoved = a !== b && !(Math.abs(b - a) <= MOVED_BEYOND * Math.max(Math.abs(a), Math.abs(b)));
			return isMoved ? [{ conductor, figure, before: a, after: b }] : [];
		});
	});
}
