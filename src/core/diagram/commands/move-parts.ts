import { current } from 'immer';
import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { conductorsAmong, hostsOf } from '../mounts.ts';
import { count, firstReason, lockedParts, missingPart, partName } from '../names.ts';
import { Id, PointSchema } from '../schema.ts';
import { edgeReason } from './limits.ts';

/**
 * Moves parts by one offset. Blocks on their studs follow by themselves, so a block named beside its host is not
 * moved twice; bends set by hand go along where both ends of the conductor do.
 */
export const moveParts = defineCommand({
	name: 'move-parts',

	args: z.strictObject({ parts: z.array(Id).min(1), by: PointSchema }),

	label: ({ parts }) => `move ${count(new Set(parts).size, 'part')}`,

	refuse(diagram, { parts, by }) {
		const missing = firstReason(parts.map((id) => missingPart(diagram, id)));
		const held = missing ?? lockedParts(diagram, parts);
		if (held !== null) return held;
		if (parts.every((id) => has(diagram.mounts, id) && !hostsOf(diagram, id).some((host) => parts.includes(host)))) {
			const block = parts[0]!;
			const host = diagram.mounts[block]!.part;
			return `${partName(diagram, block)} sits on a stud of ${partName(diagram, host)} and moves with it. Take it off the stud first.`;
		}
		const places = [...parts.map((id) => diagram.parts[id]!.at), ...bendsAmong(diagram, parts)];
		return edgeReason(places, 'That is', by);
	},

	apply(draft, { parts, by }) {
		// Looked up outside the draft: immer would make a proxy of every conductor it passes, on each frame of a drag.
		for (const id of conductorsAmong(current(draft), parts)) {
			for (const bend of draft.conductors[id]!.bends ?? []) {
				bend.x += by.x;
				bend.y += by.y;
			}
		}
		for (const id of new Set(parts)) {
			if (has(draft.mounts, id)) continue;
			const { at } = draft.parts[id]!;
			at.x += by.x;
			at.y += by.y;
		}
	}
});

const bendsAmong = (diagram: Parameters<typeof conductorsAmong>[0], parts: readonly string[]) =>
	conductorsAmong(diagram, parts).flatMap((id) => diagram.conductors[id]!.bends ?? []);
