import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { has } from '../ids.ts';
import { conductorsAmong, hostsOf } from '../mounts.ts';
import { count, firstReason, lockedParts, missingPart } from '../names.ts';
import { Id, type Diagram, type Rotation } from '../schema.ts';
import { edgeReason } from './limits.ts';

interface Place {
	x: number;
	y: number;
}

/**
 * Turns parts clockwise by quarter turns about the middle of the group; four quarter turns give the first picture
 * exactly. A block on a stud keeps its stud and only turns itself.
 */
export const rotateParts = defineCommand({
	name: 'rotate-parts',

	args: z.strictObject({ parts: z.array(Id).min(1), quarterTurns: z.int().min(-3).max(3) }),

	label: ({ parts }) => `turn ${count(new Set(parts).size, 'part')}`,

	refuse(diagram, { parts, quarterTurns }) {
		const missing = firstReason(parts.map((id) => missingPart(diagram, id)));
		const held = missing ?? lockedParts(diagram, parts);
		if (held !== null) return held;
		const centre = middle(diagram, parts);
		const places = [...standing(diagram, parts).map((id) => diagram.parts[id]!.at), ...bendsAmong(diagram, parts)];
		return edgeReason(
			places.map((place) => turned(place, centre, quarterTurns)),
			'Turned, that would be'
		);
	},

	apply(draft, { parts, quarterTurns }) {
		const centre = middle(draft, parts);
		for (const bend of bendsAmong(draft, parts)) Object.assign(bend, turned(bend, centre, quarterTurns));
		for (const id of standing(draft, parts)) Object.assign(draft.parts[id]!.at, turned(draft.parts[id]!.at, centre, quarterTurns));
		const turning = new Set(parts);
		for (const id of turning) {
			// A block turns with its host; its own rotation is on top of that.
			if (hostsOf(draft, id).some((host) => turning.has(host))) continue;
			const part = draft.parts[id]!;
			part.rotation = ((((part.rotation + 90 * quarterTurns) % 360) + 360) % 360) as Rotation;
		}
	}
});

const standing = (diagram: Pick<Diagram, 'mounts'>, parts: readonly string[]): string[] =>
	[...new Set(parts)].filter((id) => !has(diagram.mounts, id));

const bendsAmong = (diagram: Pick<Diagram, 'mounts' | 'conductors'>, parts: readonly string[]): Place[] =>
	conductorsAmong(diagram, parts).flatMap((id) => diagram.conductors[id]!.bends ?? []);

/** Middle of the box around the parts' centres. */
function middle(diagram: Pick<Diagram, 'mounts' | 'parts'>, parts: readonly string[]): Place {
	const places = standing(diagram, parts).map((id) => diagram.parts[id]!.at);
	if (places.length === 0) return { x: 0, y: 0 };
	const xs = places.map(({ x }) => x);
	const ys = places.map(({ y }) => y);
	return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: (Math.min(...ys) + Math.max(...ys)) / 2 };
}

function turned({ x, y }: Place, centre: Place, quarterTurns: number): Place {
	let dx = x - centre.x;
	let dy = y - centre.y;
	for (let turn = ((quarterTurns % 4) + 4) % 4; turn > 0; turn -= 1) [dx, dy] = [-dy, dx];
	return { x: centre.x + dx, y: centre.y + dy };
}
