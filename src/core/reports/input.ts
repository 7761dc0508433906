import { checkStudy, type CheckResult } from '#core/check';
import type { Diagram } from '#core/diagram';
import { energyBalance, type EnergyBalance } from '#core/energy';
import { buildStudy, type Study } from '#core/rules';

/** All that tables are made from. The check is the one the window shows: same diagram, same functions. */
export interface ReportInput {
	readonly diagram: Diagram;
	readonly study: Study;
	readonly check: CheckResult;
	readonly energy: EnergyBalance;
}

export function reportInput(diagram: Diagram): ReportInput {
	const study = buildStudy(diagram);
	return { diagram, study, check: checkStudy(study), energy: energyBalance(diagram, study.network) };
}
