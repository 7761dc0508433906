import { gaugeText } from '#core/conductors';
import { ARRAY_CONDUCTOR_FACTOR } from '#core/tables';
import { ampsText, compactNumber } from '#core/units';
import { arraysOf } from './arrays.ts';
import { amperageSource, amperageText, exceeds, gaugeForCurrent } from './conductor-words.ts';
import { defineRule } from './define.ts';
import { least } from './extremes.ts';
import type { ConductorView, Study } from './study.ts';
import { conductorSubject, partSubject, subjects } from './subjects.ts';
import { capital, listed, partName } from './words.ts';

interface Data {
	readonly names: string;
	readonly one: boolean;
	readonly gauge: string;
	readonly amperage: string;
	readonly array: string;
	readonly factor: number;
	readonly neededA: number;
	readonly thicker: string | null;
}

export const arrayConductors = defineRule({
	meta: {
		id: 'array-conductors',
		title: 'Conductors of an array carry its current in bright sun all day',
		severity: 'error',
		group: 'conductors',
		why: 'An array delivers its short-circuit current whenever the sun shines, and more of it beside snow or cloud edges; no fuse opens at that.',
		source: { default: ARRAY_CONDUCTOR_FACTOR.source }
	},

	messages: {
		thin: ({ names, one, gauge, amperage, array, factor, neededA, thicker }: Data) => ({
			message: `${capital(names)} (${gauge}, ${amperage}) ${one ? 'carries' : 'carry'} the array of ${array}: ${compactNumber(factor)} times its short-circuit current is ${ampsText(neededA)}.`,
			remedy: `Use ${thicker ? `at least ${thicker}` : 'thicker conductors'}, or lead each string on its own.`
		})
	},

	/** One report for each array, about its thinnest conductor. Conductors on the system’s own poles are other rules’ business. */
	*check(study) {
		for (const { view, inParallel, iscA } of arraysOf(study)) {
			if (iscA === null) continue;
			const neededA = ARRAY_CONDUCTOR_FACTOR.value * inParallel * iscA;
			const thin = atArray(study, view.id).filter(({ ampacity }) => exceeds(neededA, ampacity.currentA));
			if (thin.length === 0) continue;
			const worst = least(thin, ({ ampacity }) => ampacity.currentA)!;
			yield {
				message: 'thin',
				data: {
					names: listed(thin.map(({ name }) => name)),
					one: thin.length === 1,
					gauge: gaugeText(worst.conductor.gauge),
					amperage: amperageText(worst.ampacity),
					array: partName(view),
					factor: ARRAY_CONDUCTOR_FACTOR.value,
					neededA,
					thicker: gaugeForCurrent(study, worst, neededA)
				},
				at: subjects([...thin.map(({ id }) => conductorSubject(id)), partSubject(view.id)]),
				source: `${ARRAY_CONDUCTOR_FACTOR.source}; ${amperageSource(worst.ampacity)}`,
				unverified: true
			};
		}
	}
});

/** Conductors on the array’s nets; of several strings the whole current passes those that end on the controller. */
function atArray({ conductors, form, parts }: Study, id: string): ConductorView[] {
	const studs = parts.find((part) => part.id === id)!.terminals.filter(({ id: terminal }) => terminal.startsWith('pv-'));
	const nodes = new Set(studs.map((terminal) => form.nodeOf.get(`${id}.${terminal.id}`)));
	return conductors.filter(({ branch }) => nodes.has(branch.a) || nodes.has(branch.b));
}
