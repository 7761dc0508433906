import { unionFind } from '#core/network';
import { chassisOf } from './chassis.ts';
import { defineRule } from './define.ts';
import type { Study } from './study.ts';
import { conductorSubject, partSubject, subjects, WHOLE_DIAGRAM } from './subjects.ts';
import { bankName } from './string-paths-unequal.ts';
import { banksOf, batteriesOf } from './banks.ts';
import { capital, listed } from './words.ts';

export const insulatedReturn = defineRule({
	meta: {
		id: 'insulated-return',
		title: 'An insulated system touches the metalwork nowhere',
		severity: 'error',
		group: 'topology',
		why: 'In a metal hull a stray path to the negative eats the hull away; and a first fault, which an insulated system survives, becomes a dead short.',
		source: { 'metric-small-craft': 'ISO 13297, from memory', default: 'common practice, no source' }
	},

	messages: {
		touches: ({ names, pole }: { names: string; pole: string }) => ({
			message: `The system is said to be insulated, but ${names} ${names.includes(' and ') ? 'join' : 'joins'} its ${pole} pole to the metalwork.`,
			remedy: 'Take the connection away; or say in the settings that the negative is bonded.'
		}),
		onePole: ({ bank }: { bank: string }) => ({
			message: `${capital(bank)} ${bank.includes(' and ') ? 'are' : 'is'} switched off in one pole only, in an insulated system on a metal hull.`,
			remedy: 'Use a battery switch with two poles, so that a faulty hull connection can be parted from the bank.'
		})
	},

	/** Metalwork counts where a chassis point is drawn. */
	*check(study) {
		const { diagram, form, conductors } = study;
		const { nodes, returning } = chassisOf(study);
		// A load that returns through the metalwork is said by the rule on that.
		if (diagram.system.negative !== 'insulated' || nodes.size === 0 || returning.length > 0) return;
		const [node] = nodes;
		const pole = form.poles[node!];
		if (pole === 'positive' || pole === 'negative') {
			const joining = conductors.filter(({ branch }) => nodes.has(branch.a) !== nodes.has(branch.b));
			yield {
				message: 'touches',
				data: { names: listed(joining.map(({ name }) => name)) || 'a part', pole },
				at: joining.length > 0 ? subjects(joining.map(({ id }) => conductorSubject(id))) : [WHOLE_DIAGRAM]
			};
			return;
		}
		if (diagram.system.craft !== 'boat') return;
		for (const bank of banksOf(study).banks) {
			if (!isSwitchedIn(study, bank.strings[0]!.batteries.at(-1)!.positive, 'positive')) continue;
			if (isSwitchedIn(study, bank.strings[0]!.batteries[0]!.negative, 'negative')) continue;
			yield {
				message: 'onePole',
				severity: 'warning',
				data: { bank: bankName(study, bank) },
				at: subjects(batteriesOf(bank).map(({ part }) => partSubject(part)))
			};
		}
	}
});

/** Whether a switch parts a load from this post. */
function isSwitchedIn({ form }: Study, post: number, pole: 'positive' | 'negative'): boolean {
	const [closed, open] = [unionFind(form.nodeCount), unionFind(form.nodeCount)];
	for (const { a, b, switchedBy } of form.branches) {
		closed.union(a, b);
		if (switchedBy === null) open.union(a, b);
	}
	return form.loads.some((load) => closed.same(load[pole], post) && !open.same(load[pole], post));
}
