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
	const terminals = suppliesOf(network, nets.of);
	const studs = [...network.nodeOf].filter(([key, node]) => !key.includes('@') && isPole(network.poles[node]));
	const lost: Record<StudKey, StudVoltsLost> = {};
	for (const { id, operatingCase, point } of cases) {
		if (point.status !== 'solved' || operatingCase.duration !== 'continuous') continue;
		const reference = new Map<string, number>();
		for (const [key, nodes] of terminals) {
			const volts = nodes.map((node) => point.nodeV[node]!);
			reference.set(key, key.startsWith('positive') ? Math.max(...volts) : Math.min(...volts));
		}
		for (const [key, node] of studs) {
			const pole = network.poles[node]!;
			const against = reference.get(`${pole} ${nets.of(node)}`);
			if (against === undefined) continue;
			const volts = Math.abs(against - point.nodeV[node]!);
			if (lost[key] === undefined || volts > lost[key].volts) lost[key] = { volts, caseId: id };
		}
	}
	return lost;
}

const isPole = (pole: string | undefined): boolean => pole === 'positive' || pole === 'negative';

function suppliesOf({ batteries, sources }: Study['network'], netOf: (node: NodeIndex) => number): Map<string, NodeIndex[]> {
	const terminals = new Map<string, NodeIndex[]>();
	for (const supply of [...batteries, ...sources]) {
		for (const pole of ['positive', 'negative'] as const) {
			const key = `${pole} ${netOf(supply[pole])}`;
			terminals.set(key, [...(terminals.get(key) ?? []), supply[pole]]);
		}
	}
	return terminals;
}
