/** What sits on each stud, in which order, before anything has a size. */
import { studKey, terminalRef, type Diagram, type StackItem, type StudKey } from '#core/diagram';
import { hasOwnFuse } from './terminal.ts';

/** Lugs and block plates by the stud they land on: conductors in the diagram's order, then blocks. */
export function landings({ conductors, mounts }: Diagram): Map<StudKey, StackItem[]> {
	const landed = new Map<StudKey, StackItem[]>();
	const land = (key: StudKey, item: StackItem) => {
		const items = landed.get(key);
		if (items) items.push(item);
		else landed.set(key, [item]);
	};
	for (const [conductor, { from, to }] of Object.entries(conductors)) {
		land(studKey(from), { kind: 'lug', conductor, end: 'from' });
		land(studKey(to), { kind: 'lug', conductor, end: 'to' });
	}
	for (const [block, stud] of Object.entries(mounts)) land(studKey(stud), { kind: 'block', block });
	return landed;
}

/**
 * The stack of a stud from the seat up, as drawn where it is drawn: what is no longer there is left out, what
 * landed since is put on top of the other terminals, and a fuse block's own fuse comes first unless it was
 * drawn elsewhere. Washers and nuts are only those drawn.
 */
export function fullOrder(
	diagram: Diagram,
	key: StudKey,
	landed: ReadonlyMap<StudKey, readonly StackItem[]> = landings(diagram)
): StackItem[] {
	const present = landed.get(key) ?? [];
	const wanted = new Map<string, StackItem>(present.map((item) => [identity(item), item]));
	if (hasOwnFuse(diagram, terminalRef(key))) wanted.set('fuse', { kind: 'fuse' });

	const drawn: StackItem[] = [];
	for (const item of diagram.stacks[key] ?? []) {
		if (isHardware(item)) drawn.push(item);
		else if (wanted.delete(identity(item))) drawn.push(item);
	}

	const fuse = wanted.get('fuse');
	wanted.delete('fuse');
	if (fuse) drawn.unshift(fuse);
	// Later arrivals go under the washers and nut that close the stack, not on top of the nut.
	const top = drawn.findLastIndex((item) => !isHardware(item)) + 1;
	drawn.splice(top, 0, ...wanted.values());
	return drawn;
}

/** Washers and nuts: they count in height and never as a terminal. */
export const isHardware = (item: StackItem): boolean => item.kind === 'washer' || item.kind === 'lock-washer' || item.kind === 'nut';

function identity(item: StackItem): string {
	if (item.kind === 'lug') return `lug ${item.conductor} ${item.end}`;
	return item.kind === 'block' ? `block ${item.block}` : item.kind;
}
