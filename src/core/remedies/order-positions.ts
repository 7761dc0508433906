import { bestPositions } from '#core/bars';
import { terminalRef } from '#core/diagram';
import type { RemedyKind } from './types.ts';

/** The circuits of a bus in the order that asks least of its bar; what is on the end studs stays if that is enough. */
export const orderPositions: RemedyKind = {
	rules: ['bus-overloaded'],

	*propose(study, { subjects }) {
		const [subject] = subjects;
		const part = subject?.kind === 'part' ? subject.id : subject?.kind === 'stud' ? terminalRef(subject.id).part : undefined;
		if (part === undefined) return;
		for (const keepEnds of [true, false]) {
			const positions = bestPositions(study.diagram, part, { keepEnds });
			if (!positions?.command) continue;
			yield {
				title: `Order the circuits on ${study.part(part).label.trim() || part}: ${positions.slots.map(({ from }) => from).join(', ')}`,
				commands: [positions.command],
				group: 'order'
			};
		}
	}
};
