import type { CaseId } from '#core/diagram';

/** How one case of a network stands: voltages at nodes, currents through everything. */
export interface OperatingPoint {
	readonly caseId: CaseId;
	/**
	 * "solved"; or "collapsed" when no voltage exists at which the constant-power and constant-current loads can
	 * be fed (then the arrays hold the last iterate and must not be read as currents).
	 */
	readonly status: 'solved' | 'collapsed';
	/** Loads that pulled the system down, when collapsed (indices into Network.loads). */
	readonly collapsedLoads: readonly number[];
	/** Volts by node, each island against its own reference (the most negative battery terminal). */
	readonly nodeV: Float64Array;
	/** Amps by branch, positive from a to b. */
	readonly branchA: Float64Array;
	/** Amps delivered by each battery (negative: being charged). */
	readonly batteryA: Float64Array;
	/** Amps delivered by each other source; never negative. */
	readonly sourceA: Float64Array;
	/** Amps drawn by each load, from positive to negative terminal. */
	readonly loadA: Float64Array;
	/** Volts across each load, positive minus negative terminal. */
	readonly loadV: Float64Array;
	/** False where a load is not connected between two poles of one live island. */
	readonly loadFed: readonly boolean[];
	/** Greatest violation of Kirchhoff's current law, amps. */
	readonly residualA: number;
	readonly iterations: number;
}
