/** Figures of a conductor as inputs of others: each opens in turn. */
import type { ConductorView, Study } from '#core/rules';
import { SOLVED } from './branch.ts';
import type { Input } from './explanation.ts';
import type { ConductorFigure, FigureId } from './figure-id.ts';
import { input } from './write-out.ts';

export const figureOf = ({ id }: ConductorView, figure: ConductorFigure): FigureId => ({ of: 'conductor', id, figure });

export const resistanceInput = (view: ConductorView): Input =>
	input('R', `resistance of ${view.name}, lugs included`, view.branch.resistanceOhm, 'Ω', {
		origin: 'computed',
		source: 'copper over its length and a joint at each end',
		figure: figureOf(view, 'resistance')
	});

export const currentInput = (study: Study, view: ConductorView): Input =>
	input('I', 'current in its worst continuous case', view.continuous.currentA, 'A', {
		origin: 'computed',
		source: SOLVED,
		figure: figureOf(view, 'worst-current')
	});

export const caseNameOf = (study: Study, { continuous: { caseId } }: ConductorView): string | null =>
	caseId === null ? null : study.diagram.cases[caseId]!.label.trim() || caseId;

export const amperageInput = (view: ConductorView): Input =>
	input('Z', 'amperage after all factors', view.ampacity.currentA, 'A', {
		origin: 'computed',
		source: view.ampacity.table,
		confidence: view.ampacity.unverified ? 'memory' : 'common-practice',
		figure: figureOf(view, 'amperage')
	});
