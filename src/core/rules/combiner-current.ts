import { ofSameForm, unionFind } from '#core/network';
import { solveCase } from '#core/solver';
import { ampsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRule } from './define.ts';
import type { Study } from './study.ts';
import { partSubject } from './subjects.ts';
import { partName } from './words.ts';

export const combinerCurrent = defineRule({
	meta: {
		id: 'combiner-current',
		title: 'Joining a full bank to an empty one does not overload the relay',
		severity: 'warning',
		group: 'batteries',
		why: 'At the moment of joining nothing limits the current but a few thousandths of an ohm: contacts weld, or the fuses on both sides open.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		rush: ({ name, currentA, ratedA }: { name: string; currentA: number; ratedA: number }) => ({
			message: `When ${name} joins a bank that is full to one that is nearly empty, about ${ampsText(currentA)} flows through it; it is rated ${ampsText(ratedA)}.`,
			remedy: 'Use a relay of a higher rating, or join the banks through a DC-DC charger, which limits the current.'
		})
	},

	/** Relays that join two banks, each side taken as the empty one. */
	*check(study) {
		const { form, part } = study;
		for (const branch of form.branches) {
			if (branch.kind !== 'switch' || branch.ratedA === null || branch.origin.kind !== 'link') continue;
			if (part(branch.origin.part).definition?.group !== 'charging') continue;
			const currentA = Math.max(0, ...[branch.a, branch.b].map((side) => joiningA(study, branch.index, side)));
			if (!exceeds(currentA, branch.ratedA)) continue;
			const { part: id } = branch.origin;
			yield { message: 'rush', data: { name: partName(part(id)), currentA, ratedA: branch.ratedA }, at: [partSubject(id)] };
		}
	}
});

/** Amps through a relay with the batteries on one side of it nearly empty and the others as in use; 0 where there are none. */
function joiningA({ network }: Study, relay: number, side: number): number {
	const metal = unionFind(network.nodeCount);
	network.branches.forEach(({ a, b }, index) => {
		if (index !== relay) metal.union(a, b);
	});
	const isEmpty = (node: number) => metal.same(node, side);
	if (metal.same(network.branches[relay]!.a, network.branches[relay]!.b)) return 0;
	const batteries = network.batteries.map((battery) =>
		isEmpty(battery.positive) ? { ...battery, emfV: battery.lowEmfV ?? battery.emfV } : battery
	);
	const point = solveCase(ofSameForm({ ...network, batteries }, network), 'joining', {
		label: '',
		order: 0,
		duration: 'surge',
		loads: 0,
		sources: 0,
		levels: {}
	});
	return point.status === 'solved' ? Math.abs(point.branchA[relay]!) : 0;
}
