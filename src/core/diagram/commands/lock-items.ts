import * as z from 'zod';
import { defineCommand } from '../command.ts';
import { countSeveral, ids, missingAmong, severalIn } from './several.ts';

/** Keeps things where they are, or lets them be moved again. */
export const lockItems = defineCommand({
	name: 'lock-items',

	args: z.strictObject({ parts: ids, conductors: ids, areas: ids, notes: ids, underlays: ids, locked: z.boolean() }),

	label: ({ locked }) => (locked ? 'lock what is selected' : 'unlock what is selected'),

	refuse: (diagram, { locked, ...things }) =>
		countSeveral(things) === 0 ? `Nothing is selected to ${locked ? 'lock' : 'unlock'}.` : missingAmong(diagram, things),

	apply(draft, { locked, ...things }) {
		for (const thing of severalIn(draft, things)) {
			if (locked) thing.locked = true;
			else delete thing.locked;
		}
	}
});
