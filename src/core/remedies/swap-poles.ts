import { reconnectConductor, type Command, type ConductorEnd, type ConductorId, type Diagram, type PartId } from '#core/diagram';
import { describe } from '#core/parts';
import type { RemedyKind } from './types.ts';

/** Exchanges the conductors on the two poles of a part. */
export const swapPoles: RemedyKind = {
	rules: ['reversed-polarity', 'reversed-battery'],

	*propose(study, { subjects }) {
		const part = subjects.find(({ kind }) => kind === 'part')?.id;
		if (part === undefined || !Object.hasOwn(study.diagram.parts, part)) return;
		for (const link of describe(study.diagram.parts[part]!).links) {
			if (link.kind !== 'load' && link.kind !== 'source' && link.kind !== 'battery') continue;
			const commands = exchanged(study.diagram, part, link.positive, link.negative);
			if (commands.length > 0)
				yield { title: `Exchange the conductors of ${study.part(part).label.trim() || part}`, commands, group: 'swap' };
		}
	}
};

function exchanged({ conductors }: Diagram, part: PartId, positive: string, negative: string): Command[] {
	const ends = (terminal: string): [ConductorId, ConductorEnd][] =>
		Object.entries(conductors).flatMap(([id, ends]) =>
			(['from', 'to'] as const)
				.filter((end) => ends[end].part === part && ends[end].terminal === terminal)
				.map((end): [ConductorId, ConductorEnd] => [id, end])
		);
	const move =
		(terminal: string) =>
		([conductor, end]: [ConductorId, ConductorEnd]) =>
			reconnectConductor({ conductor, end, on: { part, terminal } });
	return [...ends(positive).map(move(negative)), ...ends(negative).map(move(positive))];
}
