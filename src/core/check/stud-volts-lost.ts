import type { CaseId, StudKey } from '#core/diagram';
import type { NodeIndex } from '#core/network';
import type { Study } from '#core/rules';

/** Volts a stud is away from what feeds it, in the case in which it is most. */
export interface StudVoltsLost {
	readonly volts: number;
	readonly caseId: CaseId;
}

/**
 * How far each stud of a pole is from the pole's own supply terminals: below the highest + terminal on its metal, or
 * above the lowest − terminal. Studs of no pole, and metal without a supply, have none. Continuous cases only.
 */
export function studVoltsLost({ network, nets, cases }: Study): Record<StudKey, StudVoltsLost> {
	const supplies = suppliesOf(network, nets.of);
	const studs = [...network.nodeOf].flatMap(([key, node]) => {
		const supply = key.includes('@') ? undefined : supplies[network.poles[node]!]?.get(nets.of(node));
		return supply ? [{ key, node, supply }] : [];
	});
	const lost: Record<StudKey, StudVoltsLost> = {};
	for (const { id, operatingCase, point } of cases) {
		if (point.status !== 'solved' || operatingCase.duration !== 'continuous') continue;
		for (const { pole, nodes, reference } of [...supplies.positive.values(), ...supplies.negative.values()]) {
			const volts = nodes.map((node) => point.nodeV[node]!);
			reference.volts = pole === 'positive' ? Math.max(...volts) : Math.min(...volts);
		}
		for (const { key, node, supply } of studs) {
			const volts = Math.abs(supply.reference.volts - point.nodeV[node]!);
			if (lost[key] === undefined || volts > lost[key].volts) lost[key] = { volts, caseId: id };
		}
	}
	return lost;
}

/** Supply terminals of one pole on one piece of metal. */
interface Supply {
	readonly pole: 'positive' | 'negative';
	readonly nodes: NodeIndex[];
	/** Of the case at hand. */
	readonly reference: { volts: number };
}

type Supplies = Record<Supply['pole'], Map<number, Supply>> & { readonly shorted?: undefined; readonly floating?: undefined };

/** By pole, then by net. */
function suppliesOf({ batteries, sources }: Study['network'], netOf: (node: NodeIndex) => number): Supplies {
	const supplies: Supplies = { positive: new Map(), negative: new Map() };
	for (const terminals of [...batteries, ...sources]) {
		for (const pole of ['positive', 'negative'] as const) {
			const net = netOf(terminals[pole]);
			const known = supplies[pole].get(net);
			if (known) known.nodes.push(terminals[pole]);
			else supplies[pole].set(net, { pole, nodes: [terminals[pole]], reference: { volts: 0 } });
		}
	}
	return supplies;
}
