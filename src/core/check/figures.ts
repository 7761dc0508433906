import type { PartId } from '#core/diagram';
import type { LetThrough } from '#core/protection';
import { deviceName, type ConductorView, type Study } from '#core/rules';
import { workingTemperatureC } from '#core/conductors';
import { greatestDevice } from '#core/profiles';
import { ampsText } from '#core/units';
import { faultCurrentA } from './fault-currents.ts';
import type { ConductorFigures, EndProtection } from './types.ts';

export function conductorFigures(
	study: Study,
	{ id, conductor, ampacity, continuous, surge, lengthM, lengthAssumed, branch, pole }: ConductorView
): ConductorFigures {
	const { currentA: letThroughA, from, to } = study.protection(id);
	const ends = { from: endProtection(study, from), to: endProtection(study, to) };
	const limitedBy = letThroughA === Infinity ? [] : [...ends.from.by, ...ends.to.by];
	const devices = limitedBy.map(({ name, currentA }) => `${name} ${ampsText(currentA)}`);
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
		surgeCase: surge.caseId,
		lengthM,
		lengthAssumed,
		dropV: continuous.currentA * branch.resistanceOhm,
		letThroughA,
		protectedBy: [...new Set(devices)],
		ends,
		protectors: [...new Set(limitedBy.map(({ part }) => part))],
		pole,
		ambientC,
		greatestDeviceA: greatestDevice(study.profile, ampacity, study.diagram.system.nominalV).currentA,
		faultA: greater(faultCurrentA(study, branch.a), faultCurrentA(study, branch.b)),
		isCranking: conductor.use === 'cranking'
	};
}

const endProtection = (study: Study, { currentA, limitedBy }: LetThrough): EndProtection => ({
	letThroughA: currentA,
	by: limitedBy.map((device) => ({ ...device, name: deviceName(study, device), isSource: limitsItself(study, device) }))
});

/** True for a self-limited source, false for a fuse or breaker. */
export const limitsItself = (study: Study, { part, link }: { readonly part: PartId; readonly link: string }): boolean =>
	study.part(part).links.some(({ id, kind }) => id === link && kind === 'source');

const greater = (a: number | null, b: number | null): number | null => (a === null || (b !== null && b > a) ? b : a);
