import type { ConductorId, PartId } from '#core/diagram';
import { keptRecord } from '#core/memory';
import { formOf } from '#core/network';
import type { LetThrough } from '#core/protection';
import { deviceName, gathered, warmOhm, workingC, type ConductorView, type Study } from '#core/rules';
import { ampsText } from '#core/units';
import { faultCurrentA } from './fault-currents.ts';
import type { CheckResult, ConductorFigures, EndProtection } from './types.ts';

/** By conductor; those of a conductor that nothing has changed about are the ones before. */
export function figuresOfAll(study: Study): CheckResult['conductors'] {
	const { conductors, memory } = study;
	const figures = figuresOfEach(study);
	return memory.keep('figures of all', [figures, idsOf(study)], () =>
		keptRecord(memory, 'figures by id', idsOf(study), (place) => figures[place]!)
	);

	function idsOf({ form }: Study): readonly ConductorId[] {
		return memory.keep('ids of conductors', [formOf(form)], () => conductors.map(({ id }) => id));
	}
}

const figuresOfEach = gathered(
	(study) => study.conductors,
	(study, view): readonly ConductorFigures[] => [conductorFigures(study, view, endsOf(study))]
);

function conductorFigures(study: Study, view: ConductorView, endOf: (letThrough: LetThrough) => EndProtection): ConductorFigures {
	const { id, conductor, around, ampacity, limit, continuous, surge, lengthM, lengthAssumed, branch, pole } = view;
	const { currentA: letThroughA, from, to } = study.protection(id);
	const ends = { from: endOf(from), to: endOf(to) };
	const limitedBy = letThroughA === Infinity ? [] : [...ends.from.by, ...ends.to.by];
	const devices = limitedBy.map(({ name, currentA }) => `${name} ${ampsText(currentA)}`);
	const { ambientC } = around;
	return {
		workingC: workingC(view),
		ampacityA: ampacity.currentA,
		ampacityTable: ampacity.table,
		continuousA: continuous.currentA,
		continuousCase: continuous.caseId,
		surgeA: surge.currentA,
		surgeCase: surge.caseId,
		lengthM,
		lengthAssumed,
		dropV: continuous.currentA * branch.resistanceOhm,
		hotDropV: continuous.currentA * warmOhm(view),
		letThroughA,
		protectedBy: [...new Set(devices)],
		ends,
		protectors: [...new Set(limitedBy.map(({ part }) => part))],
		pole,
		ambientC,
		greatestDeviceA: limit.currentA,
		faultA: greater(faultCurrentA(study, branch.a), faultCurrentA(study, branch.b)),
		isCranking: conductor.use === 'cranking'
	};
}

/** One answer for each let-through: returns on common loops share them, and large systems have many devices. */
function endsOf(study: Study): (letThrough: LetThrough) => EndProtection {
	const known = study.memory.keep('ends', [formOf(study.form), study.parts], () => new Map<LetThrough, EndProtection>());
	return (letThrough) => {
		let end = known.get(letThrough);
		if (!end) known.set(letThrough, (end = endProtection(study, letThrough)));
		return end;
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
