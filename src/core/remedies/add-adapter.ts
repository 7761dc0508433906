import { addPart, freshId, mountBlock, nextLabel, reconnectConductor, studKey, terminalRef, type StackItem } from '#core/diagram';
import { placedTerminal } from '#core/layout';
import type { Study } from '#core/rules';
import type { RemedyKind } from './types.ts';

type Lug = Extract<StackItem, { kind: 'lug' }>;

/** An adapter post on a crowded stud, with the lightest of its lugs on the faces of the post. */
export const addAdapter: RemedyKind = {
	rules: ['stud-crowded', 'stud-too-short'],

	*propose(study, { subjects }) {
		const { diagram } = study;
		const key = subjects.find(({ kind }) => kind === 'stud')?.id;
		const stack = key && study.stack(key);
		const host = key && placedTerminal(diagram, terminalRef(key));
		if (!stack || !host || host.terminal.thread === null || host.terminal.acceptsBlock === false) return;
		const lugs = stack.layers
			.flatMap(({ item }): Lug[] => (item.kind === 'lug' && study.network.branchOfConductor.has(item.conductor) ? [item] : []))
			.toSorted((a, b) => currentOf(study, a) - currentOf(study, b));
		for (const moved of [lugs.slice(0, 2), lugs.slice(0, 3)]) {
			if (moved.length < 2 || moved.length >= lugs.length) continue;
			const id = freshId(diagram.parts, 'A');
			const label = nextLabel(diagram, 'X');
			const names = moved.map(({ conductor }) => study.conductorName(conductor)).join(', ');
			yield {
				title: `Put adapter post ${label} on ${study.studName(studKey(terminalRef(stack.key)))} and ${names} on it`,
				commands: [
					addPart({ id, part: { kind: 'adapter-post', label, at: host.at, params: { faces: 2, hostThread: host.terminal.thread } } }),
					...moved.map(({ conductor, end }, index) =>
						reconnectConductor({ conductor, end, on: { part: id, terminal: String((index % 2) + 1) } })
					),
					mountBlock({ block: id, on: terminalRef(stack.key) })
				],
				group: 'adapter'
			};
		}
	}
};

const currentOf = (study: Study, { conductor }: Lug): number => study.conductor(conductor).continuous.currentA;
