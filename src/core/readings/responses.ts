import type { OperatingCase } from '#core/diagram';
import { ofSameForm, type Network } from '#core/network';
import { solveCase, type OperatingPoint } from '#core/solver';
import type { SuspectRef } from './types.ts';

/** How the volts of a case move when something differs from the drawing. Independent of readings, so kept between them. */
export interface Responses {
	readonly base: OperatingPoint;
	readonly suspects: readonly SuspectRef[];
	/** Volts by node for each ohm added to a suspect, for small ones. */
	perOhm(suspect: SuspectRef): Float64Array;
	/** The case with a resistance added to a suspect; null where it has no solution. */
	withExtra(suspect: SuspectRef, ohms: number): OperatingPoint | null;
	/** Volts by node for each volt that all batteries stand above the model. */
	readonly perBatteryV: Float64Array;
	/** Volts by node for all loads drawing twice as much, from a small step. */
	readonly perDraw: Float64Array;
}

const STEP_OHM = 1e-4;
const STEP_V = 0.01;
const STEP_DRAW = 0.01;

/** Null where the case has no solution. */
export function responsesOf(network: Network, operatingCase: OperatingCase): Responses | null {
	const solve = (changed: Network): OperatingPoint | null => {
		const point = solveCase(changed, 'measured', operatingCase);
		return point.status === 'solved' ? point : null;
	};
	const base = solve(network);
	if (!base) return null;
	const slope = (changed: Network, step: number): Float64Array => {
		const point = solve(changed);
		return Float64Array.from(base.nodeV, (volts, i) => (point ? (point.nodeV[i]! - volts) / step : 0));
	};

	// What carries no current in this case shows nothing, whatever its resistance.
	const suspects: SuspectRef[] = [
		...network.branches.filter(({ index }) => base.branchA[index] !== 0).map(({ index }) => ({ kind: 'branch', index }) as const),
		...network.batteries.filter(({ index }) => base.batteryA[index] !== 0).map(({ index }) => ({ kind: 'battery', index }) as const)
	];
	const known = new Map<string, Float64Array>();
	return {
		base,
		suspects,
		perOhm(suspect) {
			const key = `${suspect.kind} ${suspect.index}`;
			let response = known.get(key);
			if (!response) known.set(key, (response = slope(withExtra(network, suspect, STEP_OHM), STEP_OHM)));
			return response;
		},
		withExtra: (suspect, ohms) => solve(withExtra(network, suspect, ohms)),
		perBatteryV: slope(withBatteriesRaised(network, STEP_V), STEP_V),
		perDraw: slope(withDraw(network, 1 + STEP_DRAW), STEP_DRAW)
	};
}

function withExtra(network: Network, { kind, index }: SuspectRef, ohms: number): Network {
	const add = <Item extends { readonly index: number; readonly resistanceOhm: number }>(item: Item): Item =>
		item.index === index ? { ...item, resistanceOhm: item.resistanceOhm + ohms } : item;
	const changed = kind === 'branch' ? { branches: network.branches.map(add) } : { batteries: network.batteries.map(add) };
	return ofSameForm({ ...network, ...changed }, network);
}

const withBatteriesRaised = (network: Network, volts: number): Network =>
	ofSameForm(
		{
			...network,
			batteries: network.batteries.map((battery) => ({
				...battery,
				emfV: battery.emfV + volts,
				...(battery.lowEmfV === undefined ? {} : { lowEmfV: battery.lowEmfV + volts })
			}))
		},
		network
	);

const withDraw = (network: Network, times: number): Network => ({
	...network,
	loads: network.loads.map((load) => ({ ...load, draw: scaled(load.draw, times) }))
});

function scaled(draw: Network['loads'][number]['draw'], times: number): typeof draw {
	switch (draw.kind) {
		case 'power':
			return { kind: 'power', watts: draw.watts * times };
		case 'current':
			return { kind: 'current', amps: draw.amps * times };
		case 'resistance':
			return { kind: 'resistance', ohms: draw.ohms / times };
	}
}
