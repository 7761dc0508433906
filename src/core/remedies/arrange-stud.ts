import { reorderStack } from '#core/diagram';
import { stackCurrents } from '#core/rules';
import { bestOrder } from '#core/studs';
import type { RemedyKind } from './types.ts';

/** What sits on the stud in the best legal order. */
export const arrangeStud: RemedyKind = {
	rules: ['stack-order', 'lug-under-fuse', 'washer-in-current-path'],

	*propose(study, { subjects }) {
		const stud = subjects.find(({ kind }) => kind === 'stud');
		const stack = stud && study.stack(stud.id);
		if (!stack) return;
		const { order, labels, changes } = bestOrder(study.diagram, stack, stackCurrents(study, stack));
		if (!changes) return;
		yield {
			title: `Arrange ${study.studName(stack.key)} from the seat up: ${labels.join(', ')}`,
			commands: [reorderStack({ stud: stack.key, stack: [...order] })]
		};
	}
};
