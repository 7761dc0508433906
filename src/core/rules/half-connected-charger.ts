import { studKey } from '#core/diagram';
import type { Form, NodeIndex } from '#core/network';
import { defineRule } from './define.ts';
import type { Nets } from './nets.ts';
import { partSubject } from './subjects.ts';
import { wiredStuds } from './wiring.ts';
import { capital, partName } from './words.ts';

export const halfConnectedCharger = defineRule({
	meta: {
		id: 'half-connected-charger',
		title: 'A charger is connected to both poles of a battery',
		severity: 'warning',
		group: 'topology',
		why: 'A charger on one pole only charges nothing, or finds its way back through whatever metal joins the cases.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		half: ({ name, pole }: { name: string; pole: string }) => ({
			message: `The output of ${name} reaches no battery on its ${pole} side.`,
			remedy: `Connect the ${pole} of ${name}${pole === 'positive' ? ', through a fuse' : ''}.`
		}),
		none: ({ name }: { name: string }) => ({
			message: `${capital(name)} is connected, but its output reaches no battery.`,
			remedy: 'Connect it to the bus or posts of the bank it is to charge.'
		})
	},

	/** Supplies of a rail of their own need no battery. */
	*check(study) {
		const { form, nets, part } = study;
		if (form.batteries.length === 0) return;
		const wired = wiredStuds(study);
		for (const { part: id, link, positive, negative, alwaysOn } of form.sources) {
			const view = part(id);
			const output = view.links.find((l) => l.id === link);
			if (alwaysOn || output?.kind !== 'source') continue;
			if (![output.positive, output.negative].some((terminal) => wired.has(studKey({ part: id, terminal })))) continue;

			const [plus, minus] = [reachesBattery(form, nets, positive), reachesBattery(form, nets, negative)];
			const name = partName(view);
			if (!plus && !minus) yield { message: 'none', data: { name }, at: [partSubject(id)] };
			else if (!plus || !minus) yield { message: 'half', data: { name, pole: plus ? 'negative' : 'positive' }, at: [partSubject(id)] };
		}
	}
});

const reachesBattery = ({ batteries }: Form, nets: Nets, node: NodeIndex): boolean =>
	batteries.some(({ positive, negative }) => nets.of(positive) === nets.of(node) || nets.of(negative) === nets.of(node));
