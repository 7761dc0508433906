/** What a meter between two studs ought to read, and how far what was read is from it. */
import type { CaseId, StudKey } from '#core/diagram';
import type { Study } from '#core/rules';
import { SOLVED } from './branch.ts';
import type { Explanation } from './explanation.ts';
import { explanation, input } from './write-out.ts';

interface Asked {
	readonly at: StudKey;
	readonly to: StudKey;
	readonly caseId: CaseId;
	/** Read on the meter, volts; null to explain the model's value alone. */
	readonly readV: number | null;
}

export function explainBetween(study: Study, { at, to, caseId, readV }: Asked): Explanation | null {
	const result = study.cases.find(({ id }) => id === caseId);
	const [red, black] = [study.network.nodeOf.get(at), study.network.nodeOf.get(to)];
	if (red === undefined || black === undefined || result?.point.status !== 'solved') return null;
	const { nodeV } = result.point;
	const volts = (symbol: string, key: StudKey, node: number) =>
		input(symbol, `volts at ${study.studName(key)}`, nodeV[node]!, 'V', {
			origin: 'computed',
			source: SOLVED,
			figure: { of: 'stud', key, figure: 'volts', caseId }
		});
	const modelV = nodeV[red]! - nodeV[black]!;
	const where = `${study.studName(at)} and ${study.studName(to)}`;
	const common = { unit: 'V', caseName: result.operatingCase.label.trim() || caseId, source: SOLVED };
	const inputs = [volts('Ua', at, red), volts('Ub', to, black)];
	if (readV === null)
		return explanation({
			...common,
			symbol: 'U',
			name: `Volts between ${where}`,
			value: modelV,
			words: 'Red lead less black lead, as the model has them.',
			expression: 'Ua - Ub',
			inputs
		});
	return explanation({
		...common,
		symbol: 'd',
		name: `Reading between ${where}, against the model`,
		value: readV - modelV,
		words: 'What was read, less what the model has between the two leads.',
		expression: 'Ur - (Ua - Ub)',
		inputs: [
			input('Ur', 'read on the meter', readV, 'V', { origin: 'diagram', source: 'the reading on the drawing', confidence: 'given' }),
			...inputs
		]
	});
}
