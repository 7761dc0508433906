/**
 * The operating point of a network with loads that draw constant power or constant current.
 *
 * Starting from the voltages with these loads off, each round gives the loads their present voltage, works out
 * what they then draw, and solves the network. Drawing more lowers voltages, and lower voltages make loads draw
 * more, so voltages only fall, towards the highest operating point, which is the one a system settles at when
 * it is switched on. If a voltage falls to zero, there is none. Rounds shrink fast in an ordinary system; near
 * collapse they do not, and Newton steps, which approach the same point from the same side, take over.
 */
import type { Network } from '#core/network';
import { amountsOf, type Demand } from './demand.ts';
import { newtonStep } from './newton.ts';
import type { Settled } from './supply.ts';

export interface Operation {
	readonly settled: Settled;
	readonly loadA: Float64Array;
	/** Volts across each demand at the last round; zero or less where it gave out. */
	readonly demandV: Float64Array;
	readonly collapsed: boolean;
	readonly iterations: number;
}

const TOLERANCE_V = 1e-11;
const TOLERANCE_RELATIVE_W = 1e-11;
/** Rounds before the speed of convergence is judged, and the ratio above which it counts as slow. */
const EASY_ROUNDS = 4;
const SLOW_RATIO = 0.3;
const NEWTON_STEPS = 80;
/** Newton works on a full matrix of the loads; beyond this many, plain rounds are cheaper. */
const NEWTON_LOADS = 400;
const PATIENT_ROUNDS = 4000;

export function operate(
	network: Network,
	demands: readonly Demand[],
	settle: (loadA: Float64Array) => Settled,
	unloaded: Settled
): Operation {
	const { loads, nodeCount } = network;
	const demandVolts = ({ nodeV }: Settled): Float64Array =>
		Float64Array.from(demands, ({ load }) => nodeV[loads[load]!.positive]! - nodeV[loads[load]!.negative]!);

	let settled = unloaded;
	let amounts = amountsOf(demands, network, unloaded);
	let volts = demandVolts(unloaded);
	let loadA = new Float64Array(loads.length);
	let iterations = 0;

	/** Gives the loads these voltages and returns those the network then holds. */
	const round = (given: Float64Array): Float64Array => {
		iterations++;
		loadA = new Float64Array(loads.length);
		demands.forEach(({ load, kind }, i) => (loadA[load] = kind === 'power' ? amounts[i]! / given[i]! : amounts[i]!));
		settled = settle(loadA);
		return demandVolts(settled);
	};
	const done = (collapsed: boolean): Operation => ({ settled, loadA, demandV: volts, collapsed, iterations });

	/** Also brings the converters' inputs up to date, and says by how much they changed. */
	const paid = (): boolean => {
		const before = amounts;
		amounts = amountsOf(demands, network, settled);
		return amounts.every((amount, i) => Math.abs(amount - before[i]!) <= TOLERANCE_RELATIVE_W * (1 + amount));
	};

	const plainRounds = (most: number, slow: (change: number, before: number, count: number) => boolean): 'solved' | 'collapsed' | 'slow' => {
		let before = Infinity;
		for (let count = 1; count <= most; count++) {
			const held = round(volts);
			if (held.some((v) => !(v > 0))) {
				volts = held;
				return 'collapsed';
			}
			const change = largestDifference(held, volts);
			volts = held;
			if (paid() && change <= TOLERANCE_V) return 'solved';
			if (slow(change, before, count)) return 'slow';
			before = change;
		}
		return 'slow';
	};

	if (demands.length === 0) return done(false);
	const easy = plainRounds(60, (change, before, count) => count > EASY_ROUNDS && change > SLOW_RATIO * before);
	if (easy !== 'slow') return done(easy === 'collapsed');

	if (demands.length <= NEWTON_LOADS) {
		const impedances = impedanceCache(network, demands, nodeCount);
		let last = volts;
		for (let step = 0, halvings = 0; step < NEWTON_STEPS; step++) {
			const held = round(volts);
			const excess = volts.map((v, i) => v - held[i]!);
			if (paid() && excess.every((v) => Math.abs(v) <= TOLERANCE_V)) return done(false);
			// A source that came to help made the step too long: go back part of the way.
			if (last !== volts && excess.some((v) => v < -TOLERANCE_V) && halvings < 40) {
				volts = volts.map((v, i) => (v + last[i]!) / 2);
				halvings++;
				continue;
			}
			const impedance = impedances(settled);
			const softness = volts.map((v, i) => (demands[i]!.kind === 'power' ? amounts[i]! / v ** 2 : 0));
			const change = newtonStep(impedance, softness, excess);
			const next = change && volts.map((v, i) => v - change[i]!);
			if (!next || next.some((v) => !(v > 0))) {
				// Past the point of collapse, unless a source that is off might yet come to help: rounds will tell.
				if (settled.states.includes('off') || impedance.some((ohm) => ohm < -1e-12)) break;
				volts = next ?? held;
				return done(true);
			}
			last = volts;
			volts = next;
		}
	}
	return done(plainRounds(PATIENT_ROUNDS, () => false) !== 'solved');
}

const largestDifference = (a: Float64Array, b: Float64Array): number => a.reduce((most, v, i) => Math.max(most, Math.abs(v - b[i]!)), 0);

/** Ohms between the loads' terminals: volts lost at each per amp drawn at each; kept while the sources' states stay. */
function impedanceCache({ loads }: Network, demands: readonly Demand[], nodeCount: number): (settled: Settled) => Float64Array {
	const kept = new Map<unknown, Float64Array>();
	return ({ factors }) => {
		let impedance = kept.get(factors);
		if (impedance) return impedance;
		impedance = new Float64Array(demands.length ** 2);
		for (const [row, { load }] of demands.entries()) {
			const injectionA = new Float64Array(nodeCount);
			injectionA[loads[load]!.positive]! += 1;
			injectionA[loads[load]!.negative]! -= 1;
			const nodeV = factors.solve(injectionA);
			demands.forEach((other, j) => {
				const { positive, negative } = loads[other.load]!;
				impedance![row * demands.length + j] = nodeV[positive]! - nodeV[negative]!;
			});
		}
		kept.set(factors, impedance);
		return impedance;
	};
}
