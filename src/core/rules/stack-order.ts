import { areaMm2 } from '#core/conductors';
import { bestOrder, drawnHeatW, isWorthwhile, type Stack } from '#core/studs';
import { ampsText, compactNumber } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { stackCurrents, type StackCurrents } from './stack-currents.ts';
import { studSubject } from './subjects.ts';
import { capital } from './words.ts';

/** A larger lug above a smaller one that carries a fifth of its current or less. Common practice, no source. */
const CURRENT_RATIO = 5;
/** Below this the pads are small and the force is spread well enough. */
const SMALL_A = 10;

export const stackOrder = defineRuleForEach('stacks', {
	meta: {
		id: 'stack-order',
		title: 'The largest current sits lowest on the stud',
		severity: 'warning',
		group: 'studs',
		why: 'What lies on top sends its current through every joint below it. The wrong order heats the whole stack, more so when the faces grow dull.',
		source: { default: 'ABYC E-11 and FAA AC 43.13-1B: the highest-ampacity terminal goes nearest the base; joint heat by common practice' }
	},

	messages: {
		heat: ({ name, drawnW, bestW, best }: { name: string; drawnW: number; bestW: number; best: string }) => ({
			message: `The joints on ${name} give off ${watts(drawnW)} as stacked and ${watts(bestW)} in the best order.`,
			remedy: `From the seat up: ${best}.`
		}),
		pad: ({ name, upper, upperA, lower, lowerA }: { name: string; upper: string; upperA: number; lower: string; lowerA: number }) => ({
			message: `On ${name} the ${upper}, which carries ${ampsText(upperA)}, lies on the smaller ${lower}, which carries ${ampsText(lowerA)}.`,
			remedy: `Put the ${upper} below the ${lower}, so that its whole pad lies on metal.`
		})
	},

	*checkOne(stack, study) {
		if (stack.terminal.thread === null || stack.terminalCount < 2) return;
		const currents = stackCurrents(study, stack);
		const at = [studSubject(stack.key)] as const;
		// Nearly all stacks stay cool in any order: others need not be tried.
		if (isWorthwhile(drawnHeatW(stack, currents), 0)) {
			const { drawnW, bestW, labels, caseId } = bestOrder(study.diagram, stack, currents);
			if (isWorthwhile(drawnW, bestW)) {
				const name = study.studName(stack.key);
				yield { message: 'heat', data: { name, drawnW, bestW, best: capital(labels.join(', ')) }, at, caseId };
				return;
			}
		}
		if (exceeds(SMALL_A, currents.largest.currentA)) return;
		const bridged = bridgedPad(stack, currents);
		if (bridged) yield { message: 'pad', data: { name: study.studName(stack.key), ...bridged.data }, at, caseId: bridged.caseId };
	}
});

const watts = (value: number): string => `${compactNumber(value, 2)} W`;

function bridgedPad(stack: Stack, { layers, byCase }: StackCurrents) {
	const lug = (position: number) => {
		const { gauge, label } = stack.layers[layers[position]!]!;
		return gauge ? { label, areaMm2: areaMm2(gauge) } : null;
	};
	for (const { caseId, injectedA } of byCase) {
		for (let above = 1; above < layers.length; above++) {
			const [upper, lower] = [lug(above), lug(above - 1)];
			const [upperA, lowerA] = [Math.abs(injectedA[above]!), Math.abs(injectedA[above - 1]!)];
			if (!upper || !lower || upper.areaMm2 <= lower.areaMm2 || exceeds(SMALL_A, upperA) || exceeds(CURRENT_RATIO * lowerA, upperA))
				continue;
			return { caseId, data: { upper: upper.label, upperA, lower: lower.label, lowerA } };
		}
	}
	return null;
}
