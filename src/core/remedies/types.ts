import type { Command, ConductorId, Diagram, Gauge } from '#core/diagram';
import type { Finding, Study } from '#core/rules';

/** Findings of a diagram before and after a change. */
export interface Difference {
	/** Gone, or less severe than before. */
	readonly cleared: readonly Finding[];
	/** New, or more severe than before. */
	readonly added: readonly Finding[];
	/** There before and after, with other figures. */
	readonly changed: readonly Finding[];
	/** Open fatal findings and errors. */
	readonly errorsBefore: number;
	readonly errorsAfter: number;
	readonly warningsBefore: number;
	readonly warningsAfter: number;
}

export interface Remedy {
	/** What it does, as an instruction: "Use 6 AWG for C3+ and C3−". */
	readonly title: string;
	/** True when it adds no fatal finding, error or warning. */
	readonly safe: boolean;
	/** What it adds, in words; null when it is safe. */
	readonly caution: string | null;
	readonly commands: readonly Command[];
	/** All of them as one undo step. */
	readonly command: Command;
	preview(): Difference & { readonly diagram: Diagram };
}

/** A change that may mend a finding; not tried yet. */
export interface Proposal {
	/** Empty where `thicken` says it all. */
	readonly title: string;
	readonly commands: readonly Command[];
	/** Conductors that get another size, after the commands. */
	readonly thicken?: ReadonlyMap<ConductorId, Gauge>;
	/** Of proposals of one group only the best is offered. */
	readonly group?: string;
}

export interface RemedyKind {
	/** Rules whose findings it may mend. */
	readonly rules: readonly string[];
	/** Likeliest first. */
	propose(study: Study, finding: Finding): Iterable<Proposal>;
}
