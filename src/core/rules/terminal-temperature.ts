import { INSULATION_C } from '#core/diagram';
import { ampsText, celsiusText } from '#core/units';
import { amperageSource, exceeds } from './conductor-words.ts';
import { amperageAs } from './amperage.ts';
import { defineRuleForEach } from './define.ts';
import { least } from './extremes.ts';
import { numberOf } from './params.ts';
import { conductorSubject, partSubject } from './subjects.ts';
import { capital, partName } from './words.ts';

interface Data {
	readonly name: string;
	readonly currentA: number;
	readonly insulationC: number;
	readonly part: string;
	readonly terminalC: number;
	readonly allowedA: number;
}

const SOURCE = 'NFPA 70 110.14(C)';

export const terminalTemperature = defineRuleForEach('conductors', {
	meta: {
		id: 'terminal-temperature',
		title: 'A conductor stays as cool as the terminals it ends on',
		severity: 'warning',
		group: 'conductors',
		why: 'A conductor used up to the heat its insulation bears carries that heat into the terminal, which was made for less.',
		source: { default: SOURCE }
	},

	messages: {
		tooHot: ({ name, currentA, insulationC, part, terminalC, allowedA }: Data) => ({
			message: `${capital(name)} carries ${ampsText(currentA)} by its ${celsiusText(insulationC)} insulation; the terminals of ${part} are made for ${celsiusText(terminalC)}, which allows ${ampsText(allowedA)}.`,
			remedy: 'Use a thicker conductor, or a part with terminals for a higher temperature.'
		})
	},

	/** Conductors over their own amperage are another rule's. */
	*checkOne(view, study) {
		const { conductor, continuous, ampacity } = view;
		if (exceeds(continuous.currentA, ampacity.currentA)) return;
		const ends = [conductor.from.part, conductor.to.part].flatMap((id) => {
			const terminalC = numberOf(study.part(id), 'terminalC');
			return terminalC === null ? [] : [{ id, terminalC }];
		});
		const weakest = least(ends, ({ terminalC }) => terminalC);
		if (!weakest) return;
		const columnC = INSULATION_C.findLast((c) => c <= weakest.terminalC) ?? INSULATION_C[0];
		const cooler = amperageAs(study, view, { insulationC: columnC });
		if (!exceeds(continuous.currentA, cooler.currentA)) return;
		yield {
			message: 'tooHot',
			data: {
				name: view.name,
				currentA: continuous.currentA,
				insulationC: conductor.insulationC,
				part: partName(study.part(weakest.id)),
				terminalC: weakest.terminalC,
				allowedA: cooler.currentA
			},
			at: [conductorSubject(view.id), partSubject(weakest.id)],
			caseId: continuous.caseId,
			source: `${SOURCE}; ${amperageSource(cooler)}`,
			unverified: cooler.unverified
		};
	}
});
