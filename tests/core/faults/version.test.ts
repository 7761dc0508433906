/** What faults say of their nodes' versions must hold to the last bit: whoever reads them keeps what he has. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultsOf, type Condition, type Faults } from '#core/faults';
import { buildNetwork, type Network } from '#core/network';
import type { Diagram } from '#core/diagram';
import { largeDiagram } from '../../support/large-diagram.ts';

const withLength = (diagram: Diagram, id: string, lengthM: number): Diagram => ({
	...diagram,
	conductors: { ...diagram.conductors, [id]: { ...diagram.conductors[id]!, lengthM } }
});

/** All that a short at a node and what flows in branches beside it say. */
function answers(faults: Faults, { branches, branchesAt }: Network, node: number, condition: Condition) {
	const short = faults.short(node, condition);
	const near = branchesAt[node]!.map((index) => branches[index]!);
	return {
		short: short && [short.to, short.currentA, short.openV, short.loopOhm],
		atRest: near.map((branch) => faults.atRestA(branch, condition)),
		through: near.map((branch) => short?.branchA(branch))
	};
}

test('where versions of a node, its return and its neighbours are the same, so is every answer', () => {
	let kept = 0;
	let moved = 0;
	fc.assert(
		fc.property(
			fc.nat(5),
			fc.array(fc.tuple(fc.nat(999), fc.integer({ min: 1, max: 40 })), { minLength: 1, maxLength: 4 }),
			(seed, edits) => {
				let diagram = largeDiagram(90, seed);
				let network = buildNetwork(diagram);
				let faults = faultsOf(network, diagram.conductors);
				for (const [place, quarters] of edits) {
					const ids = Object.keys(diagram.conductors);
					diagram = withLength(diagram, ids[place % ids.length]!, quarters / 4);
					const [before, networkBefore] = [faults, network];
					network = buildNetwork(diagram);
					faults = faultsOf(network, diagram.conductors, before);
					for (const condition of ['greatest', 'least'] as const) {
						for (let node = 0; node < network.nodeCount; node++) {
							const around = network.branchesAt[node]!.flatMap((index) => [network.branches[index]!.a, network.branches[index]!.b]);
							const nodes = [node, faults.returnOf(node), ...around].filter((at) => at !== null);
							const isSame =
								faults.returnOf(node) === before.returnOf(node) &&
								nodes.every((at) => faults.version(at, condition) === before.version(at, condition));
							if (isSame) {
								kept++;
								expect(answers(faults, network, node, condition)).toEqual(answers(before, networkBefore, node, condition));
							} else moved++;
						}
					}
				}
			}
		),
		{ numRuns: 12 }
	);
	expect(kept).toBeGreaterThan(moved);
});
