/** What a finding is made of: its figures, and where to look them up. */
import { figureName, type Finding, type Study, type Subject } from '#core/rules';
import { CONDUCTOR_FIGURES, type Explanation, type FigureId, type Input } from './explanation.ts';
import { explanation, input } from './write-out.ts';

export function explainFinding(study: Study, finding: Finding): Explanation {
	const inputs = Object.entries(finding.numbers).map(([name, value]) => figureInput(name, value, finding));
	const { title, message, source, caseId, unverified } = finding;
	return {
		...explanation({
			symbol: '',
			name: title,
			value: null,
			unit: '',
			text: message,
			words: finding.why,
			expression: '',
			inputs,
			source,
			caseName: caseId === null ? null : study.diagram.cases[caseId]?.label.trim() || caseId,
			related: finding.subjects.flatMap((subject) => figuresOf(study, subject))
		}),
		confidence: unverified ? 'memory' : 'derived',
		isAssumed: finding.assumptions.length > 0
	};
}

function figureInput(key: string, value: number, { source, unverified }: Finding): Input {
	const { name, unit } = figureName(key);
	return input(key.replaceAll('.', '_'), name, value, unit, { origin: 'computed', source, confidence: unverified ? 'memory' : 'derived' });
}

function figuresOf(study: Study, { kind, id }: Subject): FigureId[] {
	if (kind === 'conductor')
		return study.network.branchOfConductor.has(id) ? CONDUCTOR_FIGURES.map((figure) => ({ of: 'conductor', id, figure })) : [];
	if (kind === 'stud' && study.network.nodeOf.has(id)) return [{ of: 'stud', key: id, figure: 'fault-current' }];
	return [];
}
