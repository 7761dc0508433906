/** Which devices protect what is selected, and what the selected devices protect. */
import type { CheckResult } from '#core/check';
import { itemKey, parseItemKey, type ConductorId, type ItemKey, type PartId } from '#core/diagram';
import type { Editor } from '#editor';

export interface Protection {
	/** Devices of the selected conductors. */
	readonly by: readonly PartId[];
	/** Conductors of the selected devices. */
	readonly protects: readonly ConductorId[];
}

export const protectedBy = (check: CheckResult | null, device: PartId): ConductorId[] =>
	Object.entries(check?.conductors ?? {}).flatMap(([id, { protectors }]) => (protectors.includes(device) ? [id] : []));

export function protection({ check, selection }: Pick<Editor, 'check' | 'selection'>): Protection {
	const by = new Set<PartId>();
	const protects = new Set<ConductorId>();
	for (const key of selection) {
		const { kind, id } = parseItemKey(key);
		if (kind === 'conductor' && check && Object.hasOwn(check.conductors, id))
			for (const part of check.conductors[id]!.protectors) by.add(part);
		if (kind === 'part') for (const conductor of protectedBy(check, id)) protects.add(conductor);
	}
	return { by: [...by], protects: [...protects] };
}

export const haloOf = ({ by, protects }: Protection): ReadonlySet<ItemKey> =>
	new Set([...by.map((id) => itemKey('part', id)), ...protects.map((id) => itemKey('conductor', id))]);

export interface Position {
	readonly link: string;
	/** "D1 position 3". */
	readonly name: string;
	readonly conductors: readonly ConductorId[];
}

/** The conductors a device limits faults in, by position; positions that limit none are left out. */
export function protectedByPosition(check: CheckResult | null, device: PartId): Position[] {
	const positions = new Map<string, { name: string; conductors: Set<ConductorId> }>();
	for (const [id, { ends, letThroughA }] of Object.entries(check?.conductors ?? {})) {
		if (letThroughA === Infinity) continue;
		for (const { part, link, name } of [...ends.from.by, ...ends.to.by]) {
			if (part !== device) continue;
			const known = positions.get(link) ?? { name, conductors: new Set() };
			positions.set(link, known);
			known.conductors.add(id);
		}
	}
	return [...positions]
		.map(([link, { name, conductors }]) => ({ link, name, conductors: [...conductors] }))
		.sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }));
}
