/** Which devices protect what is selected, and what the selected devices protect: by fuse position, not by part. */
import type { CheckResult } from '#core/check';
import {
	itemKey,
	parseItemKey,
	studKey,
	terminalRef,
	type ConductorId,
	type Diagram,
	type ItemKey,
	type PartId,
	type StudKey
} from '#core/diagram';
import { describe, type Link } from '#core/parts';
import type { Editor } from '#editor';

export interface Protection {
	/** Devices of the selected conductors. */
	readonly by: readonly ItemKey[];
	/** Conductors of the selected devices. */
	readonly protects: readonly ConductorId[];
}

type Device = Extract<Link, { readonly kind: 'protective' }>;

const devicesOf = ({ parts }: Diagram, part: PartId): Device[] =>
	Object.hasOwn(parts, part) ? describe(parts[part]!).links.filter((link): link is Device => link.kind === 'protective') : [];

/** What to select for a device: its part, or of several in one part the stud it feeds. */
export function deviceKey(diagram: Diagram, { part, link }: { readonly part: PartId; readonly link: string }): ItemKey {
	const devices = devicesOf(diagram, part);
	const device = devices.length > 1 ? devices.find(({ id }) => id === link) : undefined;
	const terminal = device?.between.findLast((id) => describe(diagram.parts[part]!).terminal(id));
	return terminal === undefined ? itemKey('part', part) : itemKey('stud', studKey({ part, terminal }));
}

/** Fuses and breakers that end on a stud: of a position its own, of an inline fuse that one. */
export function devicesAt(diagram: Diagram, stud: StudKey): string[] {
	const { part, terminal } = terminalRef(stud);
	return devicesOf(diagram, part).flatMap(({ id, between }) => (between.includes(terminal) ? [id] : []));
}

export function protection({ check, selection, diagram }: Pick<Editor, 'check' | 'selection' | 'diagram'>): Protection {
	const by = new Set<ItemKey>();
	const protects = new Set<ConductorId>();
	for (const key of selection) {
		const { kind, id } = parseItemKey(key);
		if (kind === 'conductor') for (const device of protectorsOf(check, id)) by.add(deviceKey(diagram, device));
		const links = kind === 'part' ? undefined : devicesAt(diagram, id);
		if (kind === 'conductor' || links?.length === 0) continue;
		const positions = protectedByPosition(check, kind === 'part' ? id : terminalRef(id).part, links);
		for (const conductor of positions.flatMap(({ conductors }) => conductors)) protects.add(conductor);
	}
	return { by: [...by], protects: [...protects] };
}

export const haloOf = ({ by, protects }: Protection): ReadonlySet<ItemKey> =>
	new Set([...by, ...protects.map((id) => itemKey('conductor', id))]);

/** What limits a fault in a conductor, from both ends; none where nothing does. */
function protectorsOf(check: CheckResult | null, conductor: ConductorId) {
	const figures = check && Object.hasOwn(check.conductors, conductor) ? check.conductors[conductor]! : null;
	return figures === null || figures.letThroughA === Infinity ? [] : [...figures.ends.from.by, ...figures.ends.to.by];
}

/** Each once, as keys. */
export const protectorKeys = (check: CheckResult | null, diagram: Diagram, conductor: ConductorId): ItemKey[] => [
	...new Set(protectorsOf(check, conductor).map((device) => deviceKey(diagram, device)))
];

export interface Position {
	readonly link: string;
	/** "D1 position 3". */
	readonly name: string;
	readonly conductors: readonly ConductorId[];
}

/** The conductors a part's devices limit faults in, by position; positions that limit none are left out. */
export function protectedByPosition(check: CheckResult | null, device: PartId, links?: readonly string[]): Position[] {
	const positions = new Map<string, { name: string; conductors: Set<ConductorId> }>();
	for (const id of Object.keys(check?.conductors ?? {})) {
		for (const { part, link, name } of protectorsOf(check, id)) {
			if (part !== device || (links && !links.includes(link))) continue;
			const known = positions.get(link) ?? { name, conductors: new Set() };
			positions.set(link, known);
			known.conductors.add(id);
		}
	}
	return [...positions]
		.map(([link, { name, conductors }]) => ({ link, name, conductors: [...conductors] }))
		.sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
}
