/** Turns the whole diagram into another, as one step that can be undone. What is equal in both is left alone, so that the step stays small. */
import type { Command } from './command.ts';
import type { Diagram } from './schema.ts';

export const becomeDiagram = (label: string, target: Diagram): Command => ({
	name: 'become-diagram',
	args: { target },
	label,
	refuse: () => null,
	apply: (draft) => become(draft as unknown as Plain, target as unknown as Plain),
	toString: () => `become-diagram ${JSON.stringify(target)}`
});

type Plain = Record<string, unknown>;

const isPlain = (value: unknown): value is Plain => typeof value === 'object' && value !== null && !Array.isArray(value);

function become(draft: Plain, target: Plain): void {
	for (const key of Object.keys(draft)) if (!Object.hasOwn(target, key)) delete draft[key];
	for (const [key, wanted] of Object.entries(target)) {
		const present = draft[key];
		if (isPlain(present) && isPlain(wanted)) become(present, wanted);
		else if (!isSame(present, wanted)) draft[key] = wanted;
	}
}

/** Arrays are short and have no keys: they are replaced whole. */
const isSame = (a: unknown, b: unknown): boolean => Object.is(a, b) || (Array.isArray(a) && JSON.stringify(a) === JSON.stringify(b));
