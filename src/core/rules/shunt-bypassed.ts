import { studKey } from '#core/diagram';
import { unionFind } from '#core/network';
import { ampsText } from '#core/units';
import { defineRule } from './define.ts';
import type { Subject } from './finding.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import type { Study } from './study.ts';
import { capital, listed, partName } from './words.ts';

export const shuntBypassed = defineRule({
	meta: {
		id: 'shunt-bypassed',
		title: 'All current of the bank passes its shunt',
		severity: 'error',
		group: 'topology',
		why: 'The monitor counts only what passes its shunt: a return or charger on the battery side makes the state of charge wrong every day.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		hidden: ({ names, one, shunt, currentA }: { names: string; one: boolean; shunt: string; currentA: number }) => ({
			message: `${capital(names)} ${one ? 'returns' : 'return'} to the battery side of ${shunt}, which hides ${ampsText(currentA)} from the monitor.`,
			remedy: `Move ${one ? 'this return' : 'these returns'} to the system side of ${shunt}.`
		}),
		around: ({ shunt }: { shunt: string }) => ({
			message: `Current can go round ${shunt}: its battery side and its system side are also joined by other conductors.`,
			remedy: `Take away the connection beside ${shunt}, so that all current passes it.`
		})
	},

	*check(study) {
		for (const [index, branch] of study.form.branches.entries()) {
			if (branch.kind !== 'shunt' || branch.origin.kind !== 'link') continue;
			const { part } = branch.origin;
			const shunt = partName(study.part(part));
			const metal = metalWithout(study, index);
			const [a, b] = [metal.find(branch.a), metal.find(branch.b)];
			if (a === b) {
				if (branch.a !== branch.b) yield { message: 'around', data: { shunt }, at: [partSubject(part)] };
				continue;
			}

			const batterySide = [a, b].find((side) => study.form.batteries.some(({ negative }) => metal.find(negative) === side));
			const otherSide = batterySide === a ? b : a;
			// Batteries on both sides: another bank's negative is joined on the system side, as its labels say.
			const side = study.form.batteries.some(({ negative }) => metal.find(negative) === otherSide) ? a : batterySide;
			if (side === undefined) continue;

			const hidden = users(study).filter(({ negative, positive }) => metal.find(negative) === side && metal.find(positive) !== side);
			if (hidden.length === 0) continue;
			const parts = [...new Set(hidden.map((user) => user.part))];
			yield {
				message: 'hidden',
				data: {
					names: listed(parts.map((id) => partName(study.part(id)))),
					one: parts.length === 1,
					shunt,
					currentA: hiddenA(study, hidden)
				},
				at: subjects([...parts.flatMap((id) => markOf(study, id, side, metal.find)), partSubject(part)])
			};
		}
	}
});

type Point = Study['cases'][number]['point'];

function users({ form }: Study) {
	return [
		...form.loads.map((load) => ({ ...load, currentA: (point: Point) => point.loadA[load.index]! })),
		...form.sources.map((source) => ({ ...source, currentA: (point: Point) => -point.sourceA[source.index]! }))
	];
}

function metalWithout({ form }: Study, shunt: number) {
	const metal = unionFind(form.nodeCount);
	form.branches.forEach(({ a, b }, index) => {
		if (index !== shunt) metal.union(a, b);
	});
	return metal;
}

/** The one conductor that brings a part's negative to the battery side; the part itself where there are more. */
function markOf({ conductors, form, part }: Study, id: string, side: number, find: (node: number) => number): Subject[] {
	const keys = new Set(part(id).terminals.map((terminal) => studKey({ part: id, terminal: terminal.id })));
	const returns = conductors.filter(({ id: conductor, conductor: { from, to } }) => {
		const ends = form.nodeOfEnd.get(conductor)!;
		return (keys.has(studKey(from)) || keys.has(studKey(to))) && find(ends.from) === side;
	});
	return [...(returns.length === 1 ? [conductorSubject(returns[0]!.id)] : []), partSubject(id)];
}

/** The most that passes beside the shunt in a continuous case, loads and chargers taken one against the other. */
function hiddenA({ cases }: Study, hidden: readonly ReturnType<typeof users>[number][]): number {
	const continuous = cases.filter(({ point, operatingCase }) => point.status === 'solved' && operatingCase.duration === 'continuous');
	return Math.max(0, ...continuous.map(({ point }) => Math.abs(hidden.reduce((total, user) => total + user.currentA(point), 0))));
}
