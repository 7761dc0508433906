import type { Network } from '#core/network';
import type { Levels } from './circuit.ts';
import type { Settled } from './supply.ts';

/** A load whose current depends on its voltage, or is fixed: everything but a resistance. */
export interface Demand {
	/** Index in Network.loads. */
	readonly load: number;
	readonly kind: 'power' | 'current';
	/** Rated amount times the level: watts or amps. Not used for a converter's input. */
	readonly amount: number;
	/** Source whose delivery it must pay for, and at what efficiency. */
	readonly follows: { readonly source: number; readonly efficiency: number } | null;
}

/** The loads that draw in this case; those not fed, or with hardly any supply, draw nothing. */
export function demandsOf(network: Network, levels: Levels, drawing: readonly boolean[]): readonly Demand[] {
	return network.loads.flatMap(({ index, draw, followsSource }): Demand[] => {
		if (!drawing[index]) return [];
		if (followsSource !== null) {
			const efficiency = Math.min(1, Math.max(0.01, network.sources[followsSource]!.efficiency));
			return [{ load: index, kind: 'power', amount: 0, follows: { source: followsSource, efficiency } }];
		}
		if (draw.kind === 'resistance') return [];
		const amount = (draw.kind === 'power' ? draw.watts : draw.amps) * levels.load[index]!;
		return amount > 0 ? [{ load: index, kind: draw.kind, amount, follows: null }] : [];
	});
}

/** Watts or amps asked by each demand, given what the sources deliver at present. */
export function amountsOf(demands: readonly Demand[], { sources }: Network, { nodeV, sourceA }: Settled): Float64Array {
	return Float64Array.from(demands, ({ amount, follows }) => {
		if (!follows) return amount;
		const { positive, negative } = sources[follows.source]!;
		return Math.max(0, (nodeV[positive]! - nodeV[negative]!) * sourceA[follows.source]!) / follows.efficiency;
	});
}
