import type { StudKey } from '#core/diagram';
import { bestOrder, drawnHeatW, isWorthwhile, jointsOf, type Joint, type Stack } from '#core/studs';
import { ampsText, compactNumber, wattsText } from '#core/units';
import { exceeds } from './conductor-words.ts';
import { defineRuleForEach } from './define.ts';
import { greatest } from './extremes.ts';
import { stackCurrents } from './stack-currents.ts';
import type { Study } from './study.ts';
import { partSubject, studSubject } from './subjects.ts';
import { derivedOf } from './watch.ts';
import { partName } from './words.ts';

/** Heat of one joint, and of all joints on one part, watts: common practice, no source. */
const JOINT_W = 3;
const PART_W = 10;

export const hotJoint = defineRuleForEach('parts', {
	meta: {
		id: 'hot-joint',
		title: 'Joints stay cool',
		severity: 'warning',
		group: 'studs',
		why: 'A joint that makes watts grows hotter as it ages and makes more: cover, fuse and insulation beside it go first.',
		source: { default: 'clean faces at the right torque: common practice, no source' }
	},

	messages: {
		one: ({ stud, heatW, currentA, mostW }: { stud: string; heatW: number; currentA: number; mostW: number }) => ({
			message: `A joint on ${stud} makes ${compactNumber(heatW, 2)} W at ${ampsText(currentA)}; ${wattsText(mostW)} is the most for one joint.`,
			remedy: 'Put the heavy lugs lowest, on the seat, with no washer between, or use a larger stud.'
		}),
		sum: ({ name, heatW, joints, mostW }: { name: string; heatW: number; joints: number; mostW: number }) => ({
			message: `The ${joints} joints of ${name} make ${compactNumber(heatW, 2)} W together; ${wattsText(mostW)} is the most for one part.`,
			remedy: 'Spread the circuits over two buses, or use larger studs.'
		})
	},

	/** One report for each part: its hottest joint, or else all together. Heat that another order takes away is that order's fault. */
	*checkOne(part, study) {
		const joints = part.terminals.flatMap(({ id }) => jointsAt(study, `${part.id}.${id}`));
		if (joints.length === 0) return;
		const hottest = greatest(joints, (joint) => joint.heatW)!;
		const hot = joints.filter(({ heatW, stack }) => exceeds(heatW, JOINT_W) && exceeds(bestW(study, stack), JOINT_W));
		if (hot.length > 0) {
			const { key, heatW, currentA, caseId } = greatest(hot, (joint) => joint.heatW)!;
			yield { message: 'one', data: { stud: study.studName(key), heatW, currentA, mostW: JOINT_W }, at: [studSubject(key)], caseId };
			return;
		}
		// Each at its own worst, which errs to the safe side.
		const heatW = joints.reduce((sum, joint) => sum + joint.heatW, 0);
		if (!exceeds(heatW, PART_W)) return;
		const data = { name: partName(part), heatW, joints: joints.length, mostW: PART_W };
		yield { message: 'sum', data, at: [partSubject(part.id)], caseId: hottest.caseId };
	}
});

/** Heat of all joints of a stack once it is in the order it ought to be in; Infinity where its order is as good as any. */
function bestW(study: Study, stack: Stack): number {
	const currents = stackCurrents(study, stack);
	if (stack.terminalCount < 2 || !isWorthwhile(drawnHeatW(stack, currents), 0)) return Infinity;
	const { drawnW, bestW } = bestOrder(study.diagram, stack, currents);
	return isWorthwhile(drawnW, bestW) ? bestW : Infinity;
}

interface JointOn extends Joint {
	readonly key: StudKey;
	readonly stack: Stack;
}

const jointsAt = derivedOf((study, key: StudKey): readonly JointOn[] => {
	const stack = study.stack(key);
	return stack ? jointsOf(stack, stackCurrents(study, stack)).map((joint) => ({ ...joint, key, stack })) : [];
});
