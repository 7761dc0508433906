import { areaMm2 } from '#core/conductors';
import type { ThreadId } from '#core/tables';
import { ampsText, compactNumber } from '#core/units';
import { defineRule } from './define.ts';
import { stackCurrents } from './stack-currents.ts';
import type { Study } from './study.ts';
import { studSubject } from './subjects.ts';
import { capital } from './words.ts';

/** Clean copper faces at the right torque, ohms: common practice, no source. */
const FACE_OHM: Record<ThreadId, number> = {
	M4: 100e-6,
	'#8': 100e-6,
	M5: 100e-6,
	'#10': 100e-6,
	M6: 50e-6,
	'1/4': 50e-6,
	M8: 20e-6,
	'5/16': 20e-6,
	M10: 10e-6,
	'3/8': 10e-6,
	M12: 10e-6,
	'1/2': 10e-6
};

/** Worth a finding: this many times the heat of the best order, and this many watts more. Common practice, no source. */
const HEAT_RATIO = 1.3;
const HEAT_W = 0.5;

/** A larger lug above a smaller one that carries a fifth of its current or less. Common practice, no source. */
const CURRENT_RATIO = 5;
/** Below this the pads are small and the force is spread well enough. */
const SMALL_A = 10;

export const stackOrder = defineRule({
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

	*check(study) {
		for (const stack of study.stacks) {
			const { thread } = stack.terminal;
			if (thread === null) continue;
			const { layers, byCase } = stackCurrents(study, stack);
			if (layers.length < 2) continue;

			const name = study.studName(stack.key);
			const at = [studSubject(stack.key)] as const;
			const heat = (injected: readonly number[]) => jointHeatW(injected, FACE_OHM[thread]);
			const worst = byCase
				.map(({ caseId, injectedA }) => ({ caseId, drawnW: heat(injectedA), ...bestOrder(injectedA, heat) }))
				.sort((a, b) => b.drawnW - b.bestW - (a.drawnW - a.bestW))[0];
			if (worst && worst.drawnW > HEAT_RATIO * worst.bestW && worst.drawnW - worst.bestW > HEAT_W) {
				const best = worst.order.map((index) => stack.layers[layers[index]!]!.label).join(', ');
				yield { message: 'heat', data: { name, drawnW: worst.drawnW, bestW: worst.bestW, best: capital(best) }, at, caseId: worst.caseId };
				continue;
			}
			const bridged = bridgedPad(study, stack.key, layers, byCase);
			if (bridged) yield { message: 'pad', data: { name, ...bridged.data }, at, caseId: bridged.caseId };
		}
	}
});

const watts = (value: number): string => `${compactNumber(value, 2)} W`;

/** Each face carries all that comes from above it; the lowest is the seat. */
function jointHeatW(injectedA: readonly number[], faceOhm: number): number {
	let aboveA = 0;
	let heatW = 0;
	for (const currentA of injectedA.toReversed()) {
		aboveA += currentA;
		heatW += faceOhm * aboveA ** 2;
	}
	return heatW;
}

/** Coolest order: all of them for up to six things, otherwise the largest current lowest. */
function bestOrder(injectedA: readonly number[], heat: (injected: readonly number[]) => number): { order: number[]; bestW: number } {
	const indices = [...injectedA.keys()];
	const bySize = indices.toSorted((a, b) => Math.abs(injectedA[b]!) - Math.abs(injectedA[a]!));
	const candidates = indices.length <= 6 ? [bySize, ...permutations(indices)] : [bySize];
	let best = { order: bySize, bestW: Infinity };
	for (const order of candidates) {
		const bestW = heat(order.map((index) => injectedA[index]!));
		// A hair's breadth better is not better: the order by size is the one people can remember.
		if (bestW < best.bestW * (1 - 1e-9)) best = { order, bestW };
	}
	return best;
}

function* permutations(items: readonly number[]): Generator<number[]> {
	if (items.length < 2) yield [...items];
	else for (const [index, item] of items.entries()) for (const rest of permutations(items.toSpliced(index, 1))) yield [item, ...rest];
}

function bridgedPad(study: Study, key: string, layers: readonly number[], byCase: ReturnType<typeof stackCurrents>['byCase']) {
	const stack = study.stack(key)!;
	const lug = (position: number) => {
		const { item, label } = stack.layers[layers[position]!]!;
		return item.kind === 'lug' ? { label, areaMm2: areaMm2(study.diagram.conductors[item.conductor]!.gauge) } : null;
	};
	for (const { caseId, injectedA } of byCase) {
		for (let above = 1; above < layers.length; above++) {
			const [upper, lower] = [lug(above), lug(above - 1)];
			const [upperA, lowerA] = [Math.abs(injectedA[above]!), Math.abs(injectedA[above - 1]!)];
			if (!upper || !lower || upper.areaMm2 <= lower.areaMm2 || upperA < SMALL_A || upperA < CURRENT_RATIO * lowerA) continue;
			return { caseId, data: { upper: upper.label, upperA, lower: lower.label, lowerA } };
		}
	}
	return null;
}
