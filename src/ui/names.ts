/** What the window calls the things of a diagram: by designation where there is one, otherwise by kind. */
import {
	parseItemKey,
	studKey,
	terminalRef,
	type Diagram,
	type ItemKey,
	type PartId,
	type StackItem,
	type StudKey,
	type TerminalRef
} from '#core/diagram';
import { gaugeText } from '#core/conductors';
import { describe } from '#core/parts';

export function partName(diagram: Diagram, id: PartId): string {
	const part = diagram.parts[id];
	if (!part) return id;
	return part.label.trim() || (describe(part).definition?.name ?? part.kind);
}

/** "B1 +". */
export function studName(diagram: Diagram, { part: id, terminal }: TerminalRef): string {
	const part = diagram.parts[id];
	const label = part ? describe(part).terminal(terminal)?.label : undefined;
	return `${partName(diagram, id)} ${label ?? terminal}`;
}

export function conductorName(diagram: Diagram, id: string): string {
	const conductor = diagram.conductors[id];
	if (!conductor) return id;
	return conductor.label.trim() || `${studName(diagram, conductor.from)} to ${studName(diagram, conductor.to)}`;
}

export function itemName(diagram: Diagram, key: ItemKey): string {
	const { kind, id } = parseItemKey(key);
	if (kind === 'part') return partName(diagram, id);
	return kind === 'conductor' ? conductorName(diagram, id) : studName(diagram, terminalRef(id));
}

const HARDWARE = { washer: 'washer', 'lock-washer': 'lock washer', nut: 'nut', fuse: 'fuse of this block' } as const;

/** "lug of W4, 6 AWG". */
export function stackItemName(diagram: Diagram, item: StackItem): string {
	if (item.kind === 'block') return `plate of ${partName(diagram, item.block)}`;
	if (item.kind !== 'lug') return HARDWARE[item.kind];
	const conductor = diagram.conductors[item.conductor];
	return `lug of ${conductorName(diagram, item.conductor)}${conductor ? `, ${gaugeText(conductor.gauge)}` : ''}`;
}

export interface Landing {
	/** What a click on it selects. */
	readonly key: ItemKey;
	readonly name: string;
	/** The stud at the conductor's other end; null for a block. */
	readonly other: TerminalRef | null;
}

/** Conductors and blocks on a stud, in the order they were drawn. */
export function landingsOn(diagram: Diagram, key: StudKey): Landing[] {
	const lugs = Object.entries(diagram.conductors).flatMap(([id, { from, to }]): Landing[] => {
		const here = { key: `conductor:${id}` as const, name: conductorName(diagram, id) };
		if (studKey(from) === key) return [{ ...here, other: to }];
		return studKey(to) === key ? [{ ...here, other: from }] : [];
	});
	const blocks = Object.entries(diagram.mounts).flatMap(([block, host]): Landing[] =>
		studKey(host) === key ? [{ key: `part:${block}`, name: partName(diagram, block), other: null }] : []
	);
	return [...lugs, ...blocks];
}
