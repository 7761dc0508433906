import type { ConductorView, Study } from '#core/rules';
import { workingTemperatureC } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import { ampsText } from '#core/units';
import { faultCurrentA } from './fault-currents.ts';
import type { ConductorFigures } from './types.ts';

export function conductorFigures(
	study: Study,
	{ id, conductor, ampacity, continuous, surge, lengthM, lengthAssumed, branch, pole }: ConductorView
): ConductorFigures {
	const { currentA: letThroughA, from, to } = study.protection(id);
	const limitedBy = letThroughA === Infinity ? [] : [...from.limitedBy, ...to.limitedBy];
	const devices = limitedBy.map(({ part, currentA }) => `${study.part(part).label.trim() || part} ${ampsText(currentA)}`);
	const { outsideC, engineSpaceC } = study.diagram.ambient;
	const ambientC = conductor.environment === 'engine-space' ? engineSpaceC : outsideC;
	const heating = { ambientC, insulationC: conductor.insulationC, currentA: continuous.currentA, ampacityA: ampacity.currentA };
	return {
		workingC: workingTemperatureC(heating),
		ampacityA: ampacity.currentA,
		ampacityTable: ampacity.table,
		continuousA: continuous.currentA,
		continuousCase: continuous.caseId,
		surgeA: surge.currentA,
		lengthM,
		lengthAssumed,
		dropV: continuous.currentA * branch.resistanceOhm,
		letThroughA,
		protectedBy: [...new Set(devices)],
		protectors: [...new Set(limitedBy.map(({ part }) => part))],
		pole,
		ambientC,
		greatestDeviceA: greatestDevice(study.profile, ampacity, study.diagram.system.nominalV).currentA,
		faultA: greater(faultCurrentA(study, branch.a), faultCurrentA(study, branch.b)),
		isCranking: conductor.use === 'cranking'
	};
}

const greater = (a: number | null, b: number | null): number | null => (a === null || (b !== null && b > a) ? b : a);
