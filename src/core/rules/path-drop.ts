/** Volts lost between a supply and a load, and where. */
import type { BatteryBranch, Branch, LoadBranch, Network, NodeIndex, SourceBranch } from '#core/network';
import type { OperatingPoint } from '#core/solver';
import type { Study } from './study.ts';

export interface PathDrop {
	/** Lost on the way there and back, volts. */
	readonly dropV: number;
	/** Nominal voltage the percentage is taken of. */
	readonly nominalV: number;
	/** Branches on the way, from the load's terminals back, with the volts each loses. */
	readonly steps: readonly { readonly branch: Branch; readonly dropV: number }[];
}

type Supply = BatteryBranch | SourceBranch;

const suppliesOf = <S extends Supply>(all: readonly S[], filter: (pole: 'positive' | 'negative') => (supply: S) => boolean) => ({
	positive: all.filter(filter('positive')),
	negative: all.filter(filter('negative'))
});

const NOMINAL_V = [12, 24, 48];

/**
 * From the terminals of the supply (the nearest battery that delivers; on a converter's rail, the converter) to the
 * load's terminals and back. Null where no supply delivers.
 */
export function pathDrop({ network, nets, diagram }: Study, point: OperatingPoint, load: LoadBranch): PathDrop | null {
	const delivers = (pole: 'positive' | 'negative', amps: Float64Array) => (supply: Supply) =>
		amps[supply.index]! > 0 && nets.of(supply[pole]) === nets.of(load[pole]);
	const batteries = suppliesOf(network.batteries, (pole) => delivers(pole, point.batteryA));
	const sources = suppliesOf(network.sources, (pole) => delivers(pole, point.sourceA));
	const fromBattery = batteries.positive.length > 0 && batteries.negative.length > 0;
	const { positive, negative } = fromBattery ? batteries : sources;
	if (positive.length === 0 || negative.length === 0) return null;

	const volts = (node: NodeIndex) => point.nodeV[node]!;
	const top = Math.min(...positive.map((supply) => volts(supply.positive)).filter((v) => v >= volts(load.positive)));
	const bottom = Math.max(...negative.map((supply) => volts(supply.negative)).filter((v) => v <= volts(load.negative)));
	if (!Number.isFinite(top) || !Number.isFinite(bottom)) return null;

	const setV = fromBattery ? diagram.system.nominalV : sources.positive[0]!.setV;
	const nominalV = NOMINAL_V.reduce((best, v) => (Math.abs(v - setV) < Math.abs(best - setV) ? v : best));
	return {
		dropV: top - volts(load.positive) + volts(load.negative) - bottom,
		nominalV,
		steps: [...stepsBack(network, point, load.positive, +1), ...stepsBack(network, point, load.negative, -1)]
	};
}

/** Follows the largest current back to its supply: `sense` +1 against the current, −1 with it. */
function* stepsBack(
	network: Network,
	point: OperatingPoint,
	start: NodeIndex,
	sense: 1 | -1
): Generator<{ branch: Branch; dropV: number }> {
	const seen = new Set<NodeIndex>();
	for (let node = start; !seen.has(node);) {
		seen.add(node);
		let best: { branch: Branch; currentA: number } | null = null;
		for (const index of network.branchesAt[node]!) {
			const branch = network.branches[index]!;
			// Current into this node, seen in the walking sense.
			const currentA = sense * (branch.b === node ? point.branchA[index]! : -point.branchA[index]!);
			if (currentA > 1e-6 && (!best || currentA > best.currentA)) best = { branch, currentA };
		}
		if (!best) return;
		yield { branch: best.branch, dropV: best.currentA * best.branch.resistanceOhm };
		node = best.branch.a === node ? best.branch.b : best.branch.a;
	}
}
