import type { CaseId, ConductorId, PartId, StudKey } from '#core/diagram';
import type { Pole } from '#core/network';
import type { Finding } from '#core/rules';
import type { StudVoltsLost } from './stud-volts-lost.ts';

/** Figures shown beside a conductor; plain data, because it crosses from the worker. */
export interface ConductorFigures {
	readonly ampacityA: number;
	readonly ampacityTable: string;
	/** Estimated temperature in its worst continuous case, °C: ambient + (insulation − ambient)·(I/Z)². */
	readonly workingC: number;
	readonly continuousA: number;
	readonly continuousCase: CaseId | null;
	/** Over all cases, short ones counted. */
	readonly surgeA: number;
	readonly surgeCase: CaseId | null;
	readonly lengthM: number;
	readonly lengthAssumed: boolean;
	/** Volts lost over this conductor in its worst continuous case, lugs included. */
	readonly dropV: number;
	/** The same with the copper as hot as the current makes it, where `dropV` takes that of the profile. */
	readonly hotDropV: number;
	/** Infinity is sent as is. */
	readonly letThroughA: number;
	/** "D1 position 3 100 A", in words; empty when unprotected. */
	readonly protectedBy: readonly string[];
	/** Let-through and what limits it, at each end. */
	readonly ends: { readonly from: EndProtection; readonly to: EndProtection };
	/** Its fuses, breakers and self-limited sources; empty when unprotected. */
	readonly protectors: readonly PartId[];
	readonly pole: Pole;
	/** Around it, °C. */
	readonly ambientC: number;
	/** Greatest device the profile allows for it, amps. */
	readonly greatestDeviceA: number;
	/** Greatest short-circuit current at its worse end, amps; null for returns. */
	readonly faultA: number | null;
	/** Starter motor's supply: exempt from protection and amperage. */
	readonly isCranking: boolean;
}

/** What limits the current into a fault at one end of a conductor. */
export interface EndProtection {
	/** Amps; Infinity when nothing limits it. */
	readonly letThroughA: number;
	/** Empty where nothing limits it or nothing feeds it. */
	readonly by: readonly Protector[];
}

/** A fuse, breaker or self-limited source. */
export interface Protector {
	readonly part: PartId;
	readonly link: string;
	/** "F3", "D1 position 3". */
	readonly name: string;
	readonly currentA: number;
	/** True for a source that gives no more than its limit, where no fuse is what limits the fault. */
	readonly isSource: boolean;
}

/** Outcome of one check of one state of a diagram. */
export interface CheckResult {
	/** By severity, then in the diagram's order. */
	readonly findings: readonly Finding[];
	readonly conductors: Readonly<Record<ConductorId, ConductorFigures>>;
	/** Volts at each stud by case, against its island's reference. */
	readonly studV: Readonly<Record<CaseId, Readonly<Record<StudKey, number>>>>;
	/** Greatest short-circuit current at each positive stud, amps, to the return beside it. */
	readonly studFaultA: Readonly<Record<StudKey, number>>;
	readonly studPole: Readonly<Record<StudKey, Pole>>;
	/** Volts away from what feeds it, for studs of a pole with a supply. */
	readonly studLostV: Readonly<Record<StudKey, StudVoltsLost>>;
	/** Stack sentence of each stud with something on it. */
	readonly stacks: Readonly<Record<StudKey, string>>;
	/** What could not be or is not checked, in words. */
	readonly notChecked: readonly string[];
	readonly assumptions: readonly string[];
	readonly profileName: string;
	readonly solveMs?: number;
}
