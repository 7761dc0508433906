/**
 * Order on the studs. A stud without an entry in `stacks` is in the order its conductors were drawn; an entry is
 * written only once somebody cares, and from then on every command keeps it true.
 */
import type { Draft } from 'immer';
import { has } from './ids.ts';
import type { ConductorEnd, Diagram, StackItem, StudKey } from './schema.ts';
import { studKey } from './stud-key.ts';

export const STACK_LIMIT = 32;

export const ENDS: readonly ConductorEnd[] = ['from', 'to'];

export const sameItem = (a: StackItem, b: StackItem): boolean => JSON.stringify(a) === JSON.stringify(b);

const isHardware = ({ kind }: StackItem): boolean => kind === 'washer' || kind === 'lock-washer' || kind === 'nut';

/** Lugs and block plates that land on a stud, in the order they were drawn; nothing about their order on the stud. */
export function landedOn(diagram: Diagram, key: StudKey): StackItem[] {
	const landed: StackItem[] = [];
	for (const [conductor, ends] of Object.entries(diagram.conductors)) {
		for (const end of ENDS) if (studKey(ends[end]) === key) landed.push({ kind: 'lug', conductor, end });
	}
	for (const [block, host] of Object.entries(diagram.mounts)) if (studKey(host) === key) landed.push({ kind: 'block', block });
	return landed;
}

/** What `landedOn` says of each stud on which anything lands, found in one walk. */
export function landedByStud({ conductors, mounts }: Pick<Diagram, 'conductors' | 'mounts'>): Map<StudKey, StackItem[]> {
	const byStud = new Map<StudKey, StackItem[]>();
	const land = (key: StudKey, item: StackItem) => {
		const there = byStud.get(key);
		if (there) there.push(item);
		else byStud.set(key, [item]);
	};
	for (const [conductor, ends] of Object.entries(conductors)) {
		for (const end of ENDS) land(studKey(ends[end]), { kind: 'lug', conductor, end });
	}
	for (const [block, host] of Object.entries(mounts)) land(studKey(host), { kind: 'block', block });
	return byStud;
}

/** Lays something on a stud whose order is kept, under the washers and nut that close it. */
export function layOn(draft: Draft<Diagram>, key: StudKey, item: StackItem): void {
	if (!has(draft.stacks, key)) return;
	const stack = draft.stacks[key]!;
	let top = stack.length;
	while (top > 0 && isHardware(stack[top - 1]!)) top -= 1;
	stack.splice(top, 0, item);
}

/** Takes the items that match off every stud, or off one; a stack that becomes empty is forgotten. */
export function takeOff(draft: Draft<Diagram>, matches: (item: StackItem) => boolean, only?: StudKey): void {
	for (const key of only === undefined ? Object.keys(draft.stacks) : [only]) {
		const stack = has(draft.stacks, key) ? draft.stacks[key]! : [];
		if (!stack.some(matches)) continue;
		const kept = stack.filter((item) => !matches(item));
		if (kept.some((item) => !isHardware(item))) draft.stacks[key] = kept;
		else delete draft.stacks[key];
	}
}

/** Why nothing more can be laid on this stud, or null. */
export const stackFull = (diagram: Diagram, key: StudKey): string | null =>
	has(diagram.stacks, key) && diagram.stacks[key]!.length >= STACK_LIMIT
		? `This stud already holds ${STACK_LIMIT} things, which is as many as can be recorded. Use another stud.`
		: null;
