/** Where the current through one element comes from. */
import type { Branch, NodeIndex } from '#core/network';
import type { Study, WorstCurrent } from '#core/rules';
import type { OperatingPoint } from '#core/solver';
import type { Explanation, Input } from './explanation.ts';
import { nodeName } from './volts-lost.ts';
import { explanation, input } from './write-out.ts';

export const SOLVED = 'worked out by the solver: Kirchhoff’s laws over the whole drawing';

/** Volts of a node; opens where it is a stud and the case is one of the drawing. */
export function voltsInput(study: Study, symbol: string, node: NodeIndex, point: OperatingPoint, name?: string): Input {
	const key = [...study.network.nodeOf].find(([key, at]) => at === node && !key.includes('@'))?.[0];
	const isCase = study.cases.some((result) => result.point === point);
	return input(symbol, name ?? `volts at ${nodeName(study, node)}`, point.nodeV[node]!, 'V', {
		origin: 'computed',
		source: SOLVED,
		figure: key !== undefined && isCase ? { of: 'stud', key, figure: 'volts', caseId: point.caseId } : null
	});
}

export const caseLabel = (study: Study, id: string): string => study.diagram.cases[id]?.label.trim() || id;

interface Words {
	readonly name: string;
	/** "the continuous case in which it carries most". */
	readonly which: string;
	readonly resistance: Input;
}

/** Volts between the ends over the resistance, in the case it is worst in. */
export function explainBranchCurrent(study: Study, { a, b }: Branch, worst: WorstCurrent, { name, which, resistance }: Words): Explanation {
	const common = { symbol: 'I', name, value: worst.currentA, unit: 'A', source: SOLVED };
	const result = study.cases.find(({ id }) => id === worst.caseId);
	if (!result) return explanation({ ...common, words: 'No case sends current through it.', expression: '0', inputs: [] });
	const label = caseLabel(study, result.id);
	return explanation({
		...common,
		words: `The volts between its ends over its resistance, in “${label}”, ${which}.`,
		expression: `abs(U1 - U2) / ${resistance.symbol}`,
		inputs: [voltsInput(study, 'U1', a, result.point), voltsInput(study, 'U2', b, result.point), resistance],
		caseName: label
	});
}
