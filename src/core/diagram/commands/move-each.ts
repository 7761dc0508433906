import { current } from 'immer';
import * as z from 'zod';
import type { Point } from '#core/geometry';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { hostsOf } from '../mounts.ts';
import { count, firstReason, lockedParts, missingPart, partName } from '../names.ts';
import { Id, PointSchema, type Diagram } from '../schema.ts';
import { edgeReason } from './limits.ts';

/**
 * Moves each part by an offset of its own: aligning, distributing, arranging. Bends set by hand go along where both
 * ends of the conductor are moved alike, and stay otherwise.
 */
export const moveEach = defineCommand({
	name: 'move-each',

	args: z.strictObject({
		moves: z.record(Id, PointSchema).refine((moves) => Object.keys(moves).length > 0, 'At least one part is moved.'),
		/** What is done to them: "align", "distribute", "arrange". */
		verb: z.enum(['align', 'distribute', 'arrange'])
	}),

	label: ({ moves, verb }) => `${verb} ${count(Object.keys(moves).length, 'part')}`,

	refuse: (diagram, { moves }) =>
		firstReason([
			...Object.keys(moves).flatMap((id) => [missingPart(diagram, id), mountedReason(diagram, id)]),
			lockedParts(diagram, Object.keys(moves)),
			edgeReason(placesAfter(diagram, moves), 'That is')
		]),

	apply(draft, { moves }) {
		for (const [id, bends] of bendsAfter(current(draft), moves)) draft.conductors[id]!.bends = bends;
		for (const [id, by] of Object.entries(moves)) {
			const { at } = draft.parts[id]!;
			at.x += by.x;
			at.y += by.y;
		}
	}
});

type Moves = Readonly<Record<string, Point>>;

const shifted = ({ x, y }: Point, by: Point): Point => ({ x: x + by.x, y: y + by.y });

const mountedReason = (diagram: Diagram, id: string): string | null =>
	has(diagram.mounts, id) ? `${partName(diagram, id)} sits on a stud and moves with what it sits on.` : null;

function bendsAfter({ conductors, mounts }: Pick<Diagram, 'conductors' | 'mounts'>, moves: Moves): [id: string, bends: Point[]][] {
	const offset = (id: string): Point | undefined => moves[hostsOf({ mounts }, id).at(-1) ?? id];
	return Object.entries(conductors).flatMap(([id, { from, to, bends }]): [string, Point[]][] => {
		const [a, b] = [offset(from.part), offset(to.part)];
		return bends === null || !a || !b || a.x !== b.x || a.y !== b.y ? [] : [[id, bends.map((bend) => shifted(bend, a))]];
	});
}

const placesAfter = (diagram: Diagram, moves: Moves): Point[] => [
	...Object.entries(moves).flatMap(([id, by]) => (has(diagram.parts, id) ? [shifted(diagram.parts[id]!.at, by)] : [])),
	...bendsAfter(diagram, moves).flatMap(([, bends]) => bends)
];
