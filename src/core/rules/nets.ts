/**
 * Metal and potentials with every switch closed and nothing drawing: which terminals are one net, and how many
 * volts batteries and sources put between nets. Needs no solver, so it also answers where no currents exist.
 */
import type { BatteryBranch, Form, NodeIndex } from '#core/network';
import { unionFind } from '#core/network';

/** A battery that closes a loop of batteries whose voltages do not add up. */
export interface Clash {
	readonly battery: BatteryBranch;
	/** Volts left over around the loop. */
	readonly excessV: number;
	/** All batteries of the loop, this one included. */
	readonly loop: readonly BatteryBranch[];
}

export interface Nets {
	/** Net of a node: nodes joined by conductors and closed devices share one. */
	of(node: NodeIndex): number;
	/** Open-circuit volts from `b` to `a`; null where nothing ties the two nets together. */
	voltsBetween(a: NodeIndex, b: NodeIndex): number | null;
	readonly clashes: readonly Clash[];
}

interface Step {
	readonly from: number;
	readonly battery: BatteryBranch | null;
	/** Volts of the net reached against `from`. */
	readonly riseV: number;
}

/** `flipped` is a battery taken as if its posts were exchanged. */
export function netsOf(network: Form, flipped: BatteryBranch | null = null): Nets {
	const metal = unionFind(network.nodeCount);
	for (const { a, b } of network.branches) metal.union(a, b);

	const tied = unionFind(network.nodeCount);
	const steps = new Map<number, { to: number; battery: BatteryBranch | null; riseV: number }[]>();
	const tie = (low: number, high: number, volts: number, battery: BatteryBranch | null) => {
		tied.union(low, high);
		steps.set(low, [...(steps.get(low) ?? []), { to: high, battery, riseV: volts }]);
		steps.set(high, [...(steps.get(high) ?? []), { to: low, battery, riseV: -volts }]);
	};

	const closing: BatteryBranch[] = [];
	const emf = (battery: BatteryBranch) => (battery === flipped ? -battery.emfV : battery.emfV);
	for (const battery of network.batteries) {
		const [low, high] = [metal.find(battery.negative), metal.find(battery.positive)];
		if (low === high) continue; // a short across its posts is another rule's business
		if (tied.same(low, high)) closing.push(battery);
		else tie(low, high, emf(battery), battery);
	}
	// Chargers give way to batteries: they only set the potential of nets no battery holds.
	for (const { positive, negative, setV } of network.sources) {
		const [low, high] = [metal.find(negative), metal.find(positive)];
		if (!tied.same(low, high)) tie(low, high, setV, null);
	}

	const { volts, cameBy } = walk(network, metal.find, steps);
	const between = (a: number, b: number) => volts.get(metal.find(a))! - volts.get(metal.find(b))!;
	return {
		of: metal.find,
		voltsBetween: (a, b) => (metal.same(a, b) ? 0 : tied.same(metal.find(a), metal.find(b)) ? between(a, b) : null),
		clashes: closing.map((battery) => ({
			battery,
			excessV: between(battery.positive, battery.negative) - emf(battery),
			loop: [battery, ...path(metal.find(battery.positive), metal.find(battery.negative), cameBy)]
		}))
	};
}

/** Volts of every net against the first of its island. The ties form a forest: each net is reached once. */
function walk(
	{ nodeCount }: Form,
	find: (node: number) => number,
	steps: ReadonlyMap<number, readonly { to: number; battery: BatteryBranch | null; riseV: number }[]>
) {
	const volts = new Map<number, number>();
	const cameBy = new Map<number, Step>();
	for (let node = 0; node < nodeCount; node++) {
		if (find(node) !== node || volts.has(node)) continue;
		volts.set(node, 0);
		const pending = [node];
		while (pending.length > 0) {
			const from = pending.pop()!;
			for (const { to, battery, riseV } of steps.get(from) ?? []) {
				if (volts.has(to)) continue;
				volts.set(to, volts.get(from)! + riseV);
				cameBy.set(to, { from, battery, riseV });
				pending.push(to);
			}
		}
	}
	return { volts, cameBy };
}

/** Batteries on the way between two nets of one island. */
function path(a: number, b: number, cameBy: ReadonlyMap<number, Step>): BatteryBranch[] {
	const toRoot = (net: number): { net: number; battery: BatteryBranch | null }[] => {
		const way = [];
		for (let step = cameBy.get(net); step; step = cameBy.get(net)) {
			way.push({ net, battery: step.battery });
			net = step.from;
		}
		return way;
	};
	const [wayA, wayB] = [toRoot(a), toRoot(b)];
	const [netsA, netsB] = [new Set(wayA.map(({ net }) => net)), new Set(wayB.map(({ net }) => net))];
	return [...wayA.filter(({ net }) => !netsB.has(net)), ...wayB.filter(({ net }) => !netsA.has(net))].flatMap(
		({ battery }) => battery ?? []
	);
}
