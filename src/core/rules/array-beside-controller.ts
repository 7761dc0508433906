import { arraysOf } from './arrays.ts';
import { defineRule } from './define.ts';
import { isSet } from './params.ts';
import { partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

export const arrayBesideController = defineRule({
	meta: {
		id: 'array-beside-controller',
		title: 'An array reaches the battery only through its controller',
		severity: 'error',
		group: 'topology',
		why: 'An array joined to the battery beside its controller overcharges it, and the battery feeds the array’s conductors at night.',
		source: { default: 'common practice, no source' }
	},

	messages: {
		beside: ({ name }: { name: string }) => ({
			message: `The positive of the array of ${name} is joined to the positive it charges, past the controller.`,
			remedy: `Take away the connection, so that all current of the array passes through ${name}.`
		}),
		backwards: ({ name }: { name: string }) => ({
			message: `${capital(name)} is connected the wrong way round: a battery is on its array terminals.`,
			remedy: 'Exchange array and battery, the battery first.'
		})
	},

	*check(study) {
		const { form, nets } = study;
		for (const { view } of arraysOf(study)) {
			const net = (terminal: string): number => nets.of(form.nodeOf.get(`${view.id}.${terminal}`)!);
			const source = form.sources.find(({ part }) => part === view.id)!;
			const name = partName(view);
			const at = [partSubject(view.id)] as const;
			const isBattery = (node: number) => form.batteries.some(({ positive }) => nets.of(positive) === node);
			// One that does not block joins the two itself.
			if (!isSet(view, 'blocksReverse')) continue;
			if (net('pv-pos') === nets.of(source.positive)) yield { message: 'beside', data: { name }, at };
			else if (isBattery(net('pv-pos'))) yield { message: 'backwards', data: { name }, at };
		}
	}
});
