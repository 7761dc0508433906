/** Which parameter of a part holds the rating of one of its fuses or breakers. */
import type { Diagram, Param, Part, PartId } from '#core/diagram';
import { describe, type Link, type ProtectiveDevice } from '#core/parts';
import { fuseFamily, STANDARD_RATINGS } from '#core/tables';

export interface DevicePlace {
	readonly part: PartId;
	readonly link: string;
	readonly device: ProtectiveDevice;
}

/** Fuses and breakers of these parts. */
export const devicesIn = ({ parts }: Diagram, ids: readonly PartId[]): DevicePlace[] =>
	[...new Set(ids)].flatMap((part) =>
		Object.hasOwn(parts, part)
			? describe(parts[part]!).links.flatMap((link) => (link.kind === 'protective' ? [{ part, link: link.id, device: link.device }] : []))
			: []
	);

/** Ratings on sale for this kind of device, amps, ascending. */
export const ratingsOf = ({ family }: ProtectiveDevice): readonly number[] =>
	family === null ? STANDARD_RATINGS.value : fuseFamily(family).ratingsA.value;

/**
 * The one parameter to set so that this device gets this rating and no other link of the part changes; null where there
 * is none. Found by trying, so that no kind of part needs to be known here.
 */
export function withRating(part: Part, link: string, ratingA: number): Part['params'] | null {
	const now = ratings(describe(part).links);
	const current = now.get(link);
	if (current === undefined) return null;
	for (const [name, value] of Object.entries(describe(part).params as Record<string, Param>)) {
		for (const set of replaced(value, current, ratingA)) {
			const params = { [name]: set };
			const next = ratings(describe({ ...part, params: { ...part.params, ...params } }).links);
			const isRight = next.get(link) === ratingA && [...now].every(([id, rating]) => id === link || next.get(id) === rating);
			if (isRight && next.size === now.size) return params;
		}
	}
	return null;
}

const ratings = (links: readonly Link[]): Map<string, number> =>
	new Map(links.flatMap((link) => (link.kind === 'protective' ? [[link.id, link.device.ratingA] as const] : [])));

/** The value, or the list with one of its entries, or of its entries' fields, changed where it holds the current rating. */
function* replaced(value: Param, current: number, ratingA: number): Generator<Param> {
	if (value === current) yield ratingA;
	if (!Array.isArray(value)) return;
	for (const [index, entry] of (value as readonly unknown[]).entries()) {
		for (const next of replacedEntry(entry, current, ratingA)) yield (value as unknown[]).with(index, next) as Param;
	}
}

function* replacedEntry(entry: unknown, current: number, ratingA: number): Generator {
	if (entry === current) yield ratingA;
	if (typeof entry !== 'object' || entry === null) return;
	for (const [name, field] of Object.entries(entry)) if (field === current) yield { ...entry, [name]: ratingA };
}
