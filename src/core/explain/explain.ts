import type { Diagram } from '#core/diagram';
import type { Study } from '#core/rules';
import { conductorExplanations } from './conductor.ts';
import type { Explanation, FigureId } from './explanation.ts';
import { explainFaultAt } from './fault.ts';
import { explainFinding } from './finding.ts';
import { explainStudVolts } from './stud.ts';
import { studyOf } from './study-of.ts';

/**
 * Where a figure comes from: formula, inputs with their sources, table and row. Null for a figure that does not
 * exist: a conductor with a loose end, a stud that is gone, a case without currents.
 */
export function explain(of: Study | Diagram, figure: FigureId): Explanation | null {
	const study = studyOf(of);
	if (figure.of === 'finding') return explainFinding(study, figure.finding);
	if (figure.of === 'conductor') {
		if (!study.network.branchOfConductor.has(figure.id)) return null;
		return conductorExplanations[figure.figure](study, study.conductor(figure.id));
	}
	if (figure.figure === 'volts') return explainStudVolts(study, figure.key, figure.caseId);
	const node = study.network.nodeOf.get(figure.key);
	return node === undefined ? null : explainFaultAt(study, node, `Fault current at ${study.studName(figure.key)}`);
}
