/** The best order along a bus as plain data, with findings before and after. */
import { change, studKey, type Change, type Diagram, type PartId } from '#core/diagram';
import { bestPositions, type Positions } from '#core/bars';
import { difference, findingsOf, type Difference } from '#core/remedies';
import { landings } from '#core/studs';
import { conductorName, partName } from './names.ts';

export interface PositionsAsk {
	readonly bus: PartId;
	/** What is on studs without a fuse, such as the feed, stays. */
	readonly keepEnds: boolean;
}

export interface PositionsOffer extends Omit<Positions, 'command' | 'slots'> {
	readonly slots: readonly {
		readonly name: string;
		/** What is there now, and what belongs there; empty for nothing. */
		readonly now: string;
		readonly then: string;
	}[];
	readonly patches: Change['patches'] | null;
	readonly difference: Difference | null;
}

export function positionsOffer(diagram: Diagram, { bus, keepEnds }: PositionsAsk): PositionsOffer | null {
	const positions = bestPositions(diagram, bus, { keepEnds });
	if (!positions) return null;
	const { command, slots, ...rest } = positions;
	const made = command && change(diagram, command);
	const landed = landings(diagram);
	const what = (terminal: string): string =>
		(landed.get(studKey({ part: bus, terminal })) ?? [])
			.map((item) => {
				if (item.kind === 'block') return partName(diagram, item.block);
				if (item.kind !== 'lug') return '';
				const ends = diagram.conductors[item.conductor]!;
				const far = ends[item.end === 'from' ? 'to' : 'from'];
				return `${partName(diagram, far.part)} (${conductorName(diagram, item.conductor)})`;
			})
			.join(', ');
	return {
		...rest,
		slots: slots.map(({ terminal, fused, from }) => ({
			name: fused ? terminal : `end ${terminal}`,
			now: what(terminal),
			then: what(from)
		})),
		patches: made && made.patches,
		difference: made && difference(findingsOf(diagram), findingsOf(made.diagram))
	};
}
