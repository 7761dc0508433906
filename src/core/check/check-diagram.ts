import type { Diagram } from '#core/diagram';
import { createMemory, keptRecord, type Memory } from '#core/memory';
import { buildStudy, holdBack, RULES, runRules, type Study } from '#core/rules';
import { assumptionsOf } from './assumptions.ts';
import { figuresOfAll } from './figures.ts';
import { notChecked } from './not-checked.ts';
import { studFaults, studPoles, studVolts } from './studs.ts';
import { studVoltsLost } from './stud-volts-lost.ts';
import type { CheckResult } from './types.ts';

/**
 * Checks one state of a diagram. Pure; never throws on a diagram that passes its schema.
 *
 * @param memory of the states checked before it: the result is the same without, only later
 */
export const checkDiagram = (diagram: Diagram, memory: Memory = createMemory()): CheckResult => checkStudy(buildStudy(diagram, memory));

/** The same, for those who look into the study as well. */
export function checkStudy(study: Study): CheckResult {
	const { findings, heldBack } = holdBack(study, runRules(study, RULES, study.memory));
	return {
		findings,
		conductors: figuresOfAll(study),
		studV: studVolts(study),
		studFaultA: studFaults(study),
		studPole: studPoles(study.form),
		studLostV: study.memory.keep('volts lost', [study.cases, study.form.nodeOf], () => studVoltsLost(study)),
		stacks: study.memory.keep('sentences', [study.stacks], () => sentencesOf(study)),
		notChecked: notChecked(study, heldBack),
		assumptions: assumptionsOf(study, findings),
		profileName: study.profile.name
	};
}

function sentencesOf({ stacks, memory }: Study): CheckResult['stacks'] {
	const keys = stacks.map(({ key }) => key);
	return keptRecord(memory, 'sentences by key', keys, (place) => stacks[place]!.sentence);
}
