import type { CaseId, StudKey } from '#core/diagram';
import { keptRecord } from '#core/memory';
import { formOf, type Form, type NodeIndex } from '#core/network';
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
export function studVoltsLost({ form, nets, cases, memory }: Study): Readonly<Record<StudKey, StudVoltsLost>> {
	const { supplies, studs, keys } = memory.keep('studs with supply', [formOf(form)], () => suppliedStuds(form, nets.of));
	const worst = new Float64Array(studs.length).fill(-1);
	const worstCase = new Array<CaseId>(studs.length);
	let isAny = false;
	for (const { id, operatingCase, point } of cases) {
		if (point.status !== 'solved' || operatingCase.duration !== 'continuous') continue;
		isAny = true;
		for (const { pole, nodes, reference } of [...supplies.positive.values(), ...supplies.negative.values()]) {
			const volts = nodes.map((node) => point.nodeV[node]!);
			reference.volts = pole === 'positive' ? Math.max(...volts) : Math.min(...volts);
		}
		for (const [place, { node, supply }] of studs.entries()) {
			const volts = Math.abs(supply.reference.volts - point.nodeV[node]!);
			if (!(volts > worst[place]!)) continue;
			worst[place] = volts;
			worstCase[place] = id;
		}
	}
	const before = memory.recall('volts lost by stud') as readonly StudVoltsLost[] | undefined;
	const lost = studs.map((_, place): StudVoltsLost => {
		const known = before?.[place];
		const [volts, caseId] = [worst[place]!, worstCase[place]!];
		return known && Object.is(known.volts, volts) && known.caseId === caseId ? known : { volts, caseId };
	});
	memory.store('volts lost by stud', lost);
	return keptRecord(memory, 'volts lost by key', isAny ? keys : [], (place) => lost[place]!);
}

/** Studs of a pole with a supply, and those supplies. */
function suppliedStuds(form: Form, netOf: (node: NodeIndex) => number) {
	const supplies = suppliesOf(form, netOf);
	const studs = [...form.nodeOf].flatMap(([key, node]) => {
		const supply = key.includes('@') ? undefined : supplies[form.poles[node]!]?.get(netOf(node));
		return supply ? [{ key, node, supply }] : [];
	});
	return { supplies, studs, keys: studs.map(({ key }) => key) };
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
function suppliesOf({ batteries, sources }: Form, netOf: (node: NodeIndex) => number): Supplies {
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
