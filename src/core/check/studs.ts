/** Figures at studs. Records of many keys are made anew only where what they are made of is another. */
import type { CaseId, StudKey } from '#core/diagram';
import { byForm, type NodeIndex } from '#core/network';
import type { Study } from '#core/rules';
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

export function studVolts({ network, cases, memory }: Study): CheckResult['studV'] {
	const solved = cases.filter(({ point }) => point.status === 'solved');
	const byCase = memory.keepEach(
		'stud volts',
		solved.map(({ id }) => id),
		(_, i) => [solved[i]!.point],
		(_, i) => recordOf(studsOf(network), ({ node }) => solved[i]!.point.nodeV[node]!)
	);
	return memory.keep('all stud volts', [byCase, ...solved.map(({ id }) => id)], () =>
		Object.fromEntries(solved.map(({ id }, i): [CaseId, Record<StudKey, number>] => [id, byCase[i]!]))
	);
}

/** Greatest short-circuit current at each stud where it is defined. */
export const studFaults = (study: Study): Record<StudKey, number> =>
	study.memory.keep('stud faults', [study.faults], () => recordOf(studsOf(study.network), ({ node }) => faultCurrentA(study, node)));

/** Studs without a value have none in the record. */
function recordOf<Value>(studs: readonly Stud[], valueOf: (stud: Stud) => Value | null): Record<StudKey, Value> {
	const record: Record<StudKey, Value> = {};
	for (const stud of studs) {
		const value = valueOf(stud);
		if (value !== null) record[stud.key] = value;
	}
	return record;
}
