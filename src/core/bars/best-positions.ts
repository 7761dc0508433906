import { compose, type Command, type Diagram, type PartId } from '#core/diagram';
import { buildStudy } from '#core/rules';
import { barCases, barFigures, barOf, type BarFigures } from './bar.ts';
import { bestSequence } from './best-sequence.ts';
import { moveCircuits } from './move-circuits.ts';

export interface PositionOptions {
	/** Leaves what is on studs without a fuse, such as the feed, where it is. */
	readonly keepEnds?: boolean;
}

export interface Positions {
	/** For each slot along the bar: its terminal, and the terminal whose circuit belongs there. */
	readonly slots: readonly { readonly terminal: string; readonly from: string; readonly fused: boolean }[];
	readonly ratedA: number | null;
	readonly changes: boolean;
	/** With the currents as they are now: they hardly move with the order. */
	readonly before: BarFigures;
	readonly after: BarFigures;
	/** Conductors and blocks that move. */
	readonly moved: number;
	/** One undo step; null where the order is as good as any. */
	readonly command: Command | null;
}

/**
 * The order of circuits and feeds along a bus that asks least of its bar: least greatest current of any segment over all
 * continuous cases, then least Σ I²R. Positions behind fuses exchange among each other, plain studs likewise; a
 * circuit takes its fuse and its name along. Null for a part without a bar.
 */
export function bestPositions(diagram: Diagram, bus: PartId, { keepEnds = false }: PositionOptions = {}): Positions | null {
	const bar = barOf(diagram, bus);
	if (!bar) return null;
	const cases = barCases(buildStudy(diagram), bus, bar);
	const order = bestSequence(
		cases,
		bar.segmentOhm,
		bar.slots.map(({ fused, terminal }) => (fused ? 'fused' : keepEnds ? terminal : 'plain'))
	);
	const isNew = order.some((from, slot) => from !== slot);
	const commands = isNew ? moveCircuits(diagram, bus, bar, order) : [];
	const sequence = cases.map(({ caseId, drawnA }) => ({ caseId, drawnA: order.map((from) => drawnA[from]!) }));
	return {
		slots: bar.slots.map(({ terminal, fused }, slot) => ({ terminal, fused, from: bar.slots[order[slot]!]!.terminal })),
		ratedA: bar.ratedA,
		changes: commands.length > 0,
		before: barFigures(cases, bar.segmentOhm),
		after: barFigures(sequence, bar.segmentOhm),
		moved: commands.filter(({ name }) => name === 'reconnect-conductor' || name === 'mount-block').length,
		command: commands.length > 0 ? compose('arrange the circuits on a bus', commands) : null
	};
}
