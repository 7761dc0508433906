/** Figures at studs. Records of many keys are made anew only where what they are made of is another. */
import type { CaseId, StudKey } from '#core/diagram';
import { keptRecord } from '#core/memory';
import { byForm, type NodeIndex } from '#core/network';
import { gathered, type Study } from '#core/rules';
import { faultCurrentA } from './fault-currents.ts';
import type { CheckResult } from './types.ts';

export interface Stud {
	readonly key: StudKey;
	readonly node: NodeIndex;
}

/** Terminals; places inside parts and the chassis are none. */
export const studsOf = byForm(({ nodeOf }): readonly Stud[] =>
	[...nodeOf].flatMap(([key, node]) => (key.includes('@') ? [] : [{ key, node }]))
);

export const studPoles = byForm((network): CheckResult['studPole'] =>
	Object.fromEntries(studsOf(network).map(({ key, node }) => [key, network.poles[node]!]))
);

const keysOf = byForm((form): readonly StudKey[] => studsOf(form).map(({ key }) => key));

export function studVolts({ form, cases, memory }: Study): CheckResult['studV'] {
	const solved = cases.filter(({ point }) => point.status === 'solved');
	const studs = studsOf(form);
	const byCase = memory.keepEach(
		'stud volts',
		solved.map(({ id }) => id),
		(_, i) => [solved[i]!.point, keysOf(form)],
		(id, i) => keptRecord(memory, `stud volts of ${id}`, keysOf(form), (place) => solved[i]!.point.nodeV[studs[place]!.node]!)
	);
	return memory.keep('all stud volts', [byCase, ...solved.map(({ id }) => id)], () =>
		Object.fromEntries(solved.map(({ id }, i): [CaseId, Readonly<Record<StudKey, number>>] => [id, byCase[i]!]))
	);
}

/** Greatest short-circuit current at each stud where it is defined; others have none in the record. */
export function studFaults(study: Study): Readonly<Record<StudKey, number>> {
	const { memory } = study;
	const faults = faultAtEach(study);
	return memory.keep('stud faults', [faults], () => {
		const keys = memory.keepList(
			'studs with faults',
			faults.map(({ key }) => key)
		);
		return keptRecord(memory, 'stud faults by key', keys, (place) => faults[place]!.currentA);
	});
}

const faultAtEach = gathered(
	({ form }) => studsOf(form),
	(study, { key, node }) => {
		const currentA = faultCurrentA(study, node);
		return currentA === null ? [] : [{ key, currentA }];
	}
);
