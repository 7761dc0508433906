/** A command made of patches, for a change that was worked out elsewhere: commands hold functions, and do not cross from a worker. */
import { applyPatches, type Patch } from 'immer';
import type { Command } from './command.ts';
import type { Diagram } from './schema.ts';

export interface Recording {
	readonly label: string;
	/** The diagram the patches were made for; on any other they could damage it. */
	readonly of: Diagram;
	readonly patches: readonly Patch[];
}

export const recorded = ({ label, of, patches }: Recording): Command => ({
	name: 'recorded',
	args: { label, patches },
	label,
	refuse: (diagram) => (diagram === of ? null : 'The drawing has changed since this was worked out. It is worked out again now.'),
	apply: (draft) => void applyPatches(draft, [...patches]),
	toString: () => `recorded ${JSON.stringify(patches)}`
});
