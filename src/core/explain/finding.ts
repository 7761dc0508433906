/** What a finding is made of: its figures, each opening to where it comes from, and what else is known of its subjects. */
import { gaugeText } from '#core/conductors';
import { figureName, type Finding, type Study, type Subject } from '#core/rules';
import type { Explanation, Input, Related } from './explanation.ts';
import { CONDUCTOR_FIGURES, ENERGY_FIGURES, type FigureId } from './figure-id.ts';
import { figureOfNumber, type Candidate } from './finding-figures.ts';
import { explanation, input } from './write-out.ts';
import { celsiusText } from '#core/units';

/** Of a finding about many things, those of the first few are offered: all are alike. */
const SUBJECTS = 4;

/** @param explain how other figures are explained, since a finding is made of them */
export function explainFinding(study: Study, finding: Finding, explain: (figure: FigureId) => Explanation | null): Explanation {
	const candidates: Candidate[] = [...finding.subjects.slice(0, SUBJECTS).flatMap((subject) => figuresOf(study, finding, subject))].flatMap(
		(figure) => {
			const found = explain(figure);
			return found?.value === null || !found ? [] : [{ figure, name: found.name, value: found.value, unit: found.unit }];
		}
	);
	const inputs = Object.entries(finding.numbers).map(([name, value]) => figureInput(name, value, finding, candidates));
	const opened = new Set(inputs.map(({ figure }) => figure));
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
			...tableOf(study, finding),
			caseName: caseId === null ? null : study.diagram.cases[caseId]?.label.trim() || caseId,
			related: candidates.flatMap(({ figure, name }): Related[] => (opened.has(figure) ? [] : [{ figure, name }]))
		}),
		confidence: unverified ? 'memory' : 'derived',
		isAssumed: finding.assumptions.length > 0
	};
}

function figureInput(key: string, value: number, { source, unverified }: Finding, candidates: readonly Candidate[]): Input {
	const { name, unit } = figureName(key);
	return input(key.replaceAll('.', '_'), name, value, unit, {
		origin: 'computed',
		source,
		confidence: unverified ? 'memory' : 'derived',
		figure: figureOfNumber(key, value, unit, candidates)
	});
}

/** The amperage table behind it, where its source says that one was used: tables differ by up to 1.57 times. */
function tableOf(study: Study, { subjects, source }: Finding): Pick<Explanation, 'table' | 'row'> {
	for (const { kind, id } of subjects) {
		if (kind !== 'conductor' || !study.network.branchOfConductor.has(id)) continue;
		const { ampacity, conductor } = study.conductor(id);
		if (source.includes(ampacity.table))
			return { table: ampacity.table, row: `${gaugeText(conductor.gauge)}, ${celsiusText(conductor.insulationC)} insulation` };
	}
	return { table: null, row: null };
}

function figuresOf(study: Study, { caseId }: Finding, { kind, id }: Subject): FigureId[] {
	if (kind === 'conductor')
		return study.network.branchOfConductor.has(id) ? CONDUCTOR_FIGURES.map((figure) => ({ of: 'conductor', id, figure })) : [];
	if (kind === 'stud')
		return [
			...(study.network.nodeOf.has(id) ? [{ of: 'stud', key: id, figure: 'fault-current' } as const] : []),
			{ of: 'stud', key: id, figure: 'thread-left' }
		];
	if (kind === 'diagram') return ENERGY_FIGURES.map((figure) => ({ of: 'energy', figure, unit: 'Ah' }));
	return figuresOfPart(study, id, caseId);
}

function figuresOfPart(study: Study, part: string, caseId: string | null): FigureId[] {
	const { links } = study.part(part);
	return links.flatMap(({ kind, id: link }): FigureId[] => {
		if (kind === 'protective')
			return (['current', 'loading', 'fault-current', 'breaking', 'opens-from', 'opens-by'] as const).map((figure) => ({
				of: 'device',
				part,
				link,
				figure
			}));
		if (caseId === null) return [];
		if (kind === 'load')
			return [
				{ of: 'load', part, link, caseId, figure: 'current' },
				{ of: 'load', part, link, caseId, figure: 'volts' },
				{ of: 'ladder', load: part, caseId, figure: 'total' },
				{ of: 'ladder', load: part, caseId, figure: 'percent' }
			];
		return kind === 'battery' || kind === 'source' ? [{ of: 'supply', part, link, caseId, figure: 'current' }] : [];
	});
}
