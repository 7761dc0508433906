/** Parts that an operating case may say something about, by what it can say. */
import type { Diagram, PartId } from '#core/diagram';
import { describe, type Link } from '#core/parts';

export type LevelRole = 'batteries' | 'switches' | 'devices' | 'sources' | 'loads';

/** A part with several links goes by the first of these it has: a charger that draws on another battery is a source. */
const ROLES: readonly (readonly [LevelRole, Link['kind']])[] = [
	['batteries', 'battery'],
	['sources', 'source'],
	['loads', 'load'],
	['switches', 'switch'],
	['devices', 'protective']
];

/** In the order of the diagram; groups without a part are left out. */
export function levelGroups({ parts }: Diagram): { readonly role: LevelRole; readonly parts: readonly PartId[] }[] {
	const found = new Map<LevelRole, PartId[]>(ROLES.map(([role]) => [role, []]));
	for (const [id, part] of Object.entries(parts)) {
		const kinds = new Set(describe(part).links.map(({ kind }) => kind));
		const role = ROLES.find(([, kind]) => kinds.has(kind))?.[0];
		if (role) found.get(role)!.push(id);
	}
	return [...found].flatMap(([role, ids]) => (ids.length > 0 ? [{ role, parts: ids }] : []));
}

/** A level as it is shown: one decimal of a percent. */
export const percentOf = (level: number): number => Math.round(level * 1000) / 10;
