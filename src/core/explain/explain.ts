import type { Diagram } from '#core/diagram';
import type { Study } from '#core/rules';
import { explainBand, explainBandLimit } from './band.ts';
import { explainBetween } from './between.ts';
import { explainCase } from './case-figures.ts';
import { conductorExplanations } from './conductor.ts';
import { explainDevice } from './device.ts';
import { explainEnergy, explainEnergyBattery, explainEnergyLoad, explainEnergySource } from './energy.ts';
import type { Explanation } from './explanation.ts';
import { explainFaultAt } from './fault.ts';
import type { FigureId } from './figure-id.ts';
import { explainFinding } from './finding.ts';
import { explainJoint, explainJoints } from './joint.ts';
import { explainLadder, explainRung } from './ladder.ts';
import { explainLoad } from './load.ts';
import { explainShort } from './short.ts';
import { explainStart, explainStartDevice } from './start.ts';
import { explainStudVolts } from './stud.ts';
import { studyOf } from './study-of.ts';
import { explainSupply } from './supply.ts';
import { explainThreadLeft } from './thread.ts';

type Kind = FigureId['of'];
type Explain<Of extends Kind> = (study: Study, figure: Extract<FigureId, { readonly of: Of }>) => Explanation | null;

const EXPLAIN: { readonly [Of in Kind]: Explain<Of> } = {
	conductor: (study, { id, figure }) =>
		study.network.branchOfConductor.has(id) ? conductorExplanations[figure](study, study.conductor(id)) : null,
	stud(study, wanted) {
		if (wanted.figure === 'volts') return explainStudVolts(study, wanted.key, wanted.caseId);
		if (wanted.figure === 'thread-left') return explainThreadLeft(study, wanted.key);
		const node = study.network.nodeOf.get(wanted.key);
		return node === undefined ? null : explainFaultAt(study, node, `Fault current at ${study.studName(wanted.key)}`);
	},
	joint: (study, { above, figure, ...of }) => explainJoint(study, of, above, figure),
	joints: (study, of) => explainJoints(study, of),
	device: (study, { figure, part, link }) => explainDevice(study, { part, link }, figure),
	load: (study, { figure, caseId, part, link }) => explainLoad(study, { part, link }, caseId, figure),
	supply: (study, { figure, caseId, part, link }) => explainSupply(study, { part, link }, caseId, figure),
	start: (study, { figure, part, link }) => (has(study, part) ? explainStart(study, { part, link }, figure) : null),
	'start-device': (study, { figure, part, link, device }) =>
		has(study, part) ? explainStartDevice(study, { part, link }, device, figure) : null,
	rung: (study, { rung, figure, ...of }) => (has(study, of.load) ? explainRung(study, of, rung, figure) : null),
	ladder: (study, { figure, ...of }) => (has(study, of.load) ? explainLadder(study, of, figure) : null),
	case: (study, { id, figure }) => explainCase(study, id, figure),
	energy: (study, { figure, unit }) => explainEnergy(study, figure, unit),
	'energy-load': (study, { part, unit }) => explainEnergyLoad(study, part, unit),
	'energy-source': (study, { part, unit }) => explainEnergySource(study, part, unit),
	'energy-battery': (study, { part, unit }) => explainEnergyBattery(study, part, unit),
	band: (study, wanted) => explainBand(study, wanted),
	'band-limit': (study, wanted) => explainBandLimit(study, wanted),
	short: (study, wanted) => explainShort(study, wanted),
	between: (study, wanted) => explainBetween(study, wanted),
	finding: (study, { finding }) => explainFinding(study, finding, (figure) => explain(study, figure))
};

const has = ({ diagram }: Study, part: string): boolean => Object.hasOwn(diagram.parts, part);

/**
 * Where a figure comes from: formula, inputs with their sources, table and row. Null for a figure that does not
 * exist: a conductor with a loose end, a stud that is gone, a case without currents.
 */
export function explain(of: Study | Diagram, figure: FigureId): Explanation | null {
	return (EXPLAIN[figure.of] as (study: Study, figure: FigureId) => Explanation | null)(studyOf(of), figure);
}
