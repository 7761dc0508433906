/**
 * Everything a rule may look at, worked out once for each state of the diagram. Members that cost something are
 * computed on first use.
 */
import type { CaseId, Conductor, ConductorId, Diagram, OperatingCase, PartId, StudKey, Surroundings } from '#core/diagram';
import type { Faults } from '#core/faults';
import type { Memory } from '#core/memory';
import type { Branch, Form, Network, Pole } from '#core/network';
import type { PartDescription } from '#core/parts';
import type { Ampacity, GreatestDevice, Profile } from '#core/profiles';
import type { ConductorProtection } from '#core/protection';
import type { OperatingPoint } from '#core/solver';
import type { Stack } from '#core/studs';
import type { Nets } from './nets.ts';

/** A part with what its definition says of it; `definition` is null for a kind this build does not know. */
export interface PartView extends PartDescription {
	readonly id: PartId;
	readonly label: string;
}

export interface WorstCurrent {
	/** Magnitude, amps. */
	readonly currentA: number;
	readonly caseId: CaseId | null;
}

export interface CaseCurrent {
	readonly caseId: CaseId;
	readonly amps: number;
}

export interface ConductorView {
	readonly id: ConductorId;
	/** Label, or "unlabelled conductor from B1 + to D1 L". */
	readonly name: string;
	readonly conductor: Conductor;
	/** What it runs through: as set on it, by an area, or by the diagram. */
	readonly around: Surroundings;
	readonly branch: Branch;
	/** Length used; assumed where the diagram gives none. */
	readonly lengthM: number;
	readonly lengthAssumed: boolean;
	readonly pole: Pole;
	readonly ampacity: Ampacity;
	/** Greatest device the profile allows for it. */
	readonly limit: GreatestDevice;
	/** Greatest current over continuous cases, and over all cases. */
	readonly continuous: WorstCurrent;
	readonly surge: WorstCurrent;
}

export interface CaseResult {
	readonly id: CaseId;
	readonly operatingCase: OperatingCase;
	readonly point: OperatingPoint;
}

export interface Study {
	readonly diagram: Diagram;
	/** Of earlier states of the diagram; holds nothing that changes an answer. */
	readonly memory: Memory;
	readonly profile: Profile;
	readonly network: Network;
	/** The network whatever its resistances: a rule that asks for it is left alone when a length or a size changes. */
	readonly form: Form;
	/** Metal joined with every switch closed, and the open-circuit volts between its nets. */
	readonly nets: Nets;
	/** In the cases' order. */
	readonly cases: readonly CaseResult[];
	/** All loads and sources off, all switches closed: what flows then flows between batteries. */
	readonly atRest: OperatingPoint;
	/** In the diagram's order. */
	readonly parts: readonly PartView[];
	/** Those with both ends on terminals that exist; the others have no branch. */
	readonly conductors: readonly ConductorView[];
	part(id: PartId): PartView;
	conductor(id: ConductorId): ConductorView;
	/** Label, or "unlabelled conductor from B1 + to D1 L"; also of a conductor without a branch. */
	conductorName(id: ConductorId): string;
	/** "B1 +" for "B1.pos". */
	studName(key: StudKey): string;
	protection(id: ConductorId): ConductorProtection;
	/** Never below `protection(id).currentA`, and quick. */
	letThroughBound(id: ConductorId): number;
	/** Short-circuit currents. */
	readonly faults: Faults;
	/** Stacks of all studs with something on them. */
	readonly stacks: readonly Stack[];
	stack(key: StudKey): Stack | undefined;
	/** Greatest current of a branch over continuous cases. */
	branchCurrent(branchIndex: number): WorstCurrent;
	/** Amps of a branch in each continuous case that has currents, positive from a to b. */
	continuousA(branchIndex: number): readonly CaseCurrent[];
	/** Amps drawn by a load in each case that has currents. */
	loadA(loadIndex: number): readonly CaseCurrent[];
	/** A branch with its resistance. */
	branch(branchIndex: number): Branch;
}
