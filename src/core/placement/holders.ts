/** Fitting and taking out fuses of a part, whatever its kind: the parameter is found by trying. */
import type { Param, Part } from '#core/diagram';
import { describe, fieldMeta, type ProtectiveDevice } from '#core/parts';

/** The fuse behind a terminal; null where there is none. */
export function fuseBehind(part: Part, terminal: string): ProtectiveDevice | null {
	const link = describe(part).links.find((link) => link.kind === 'protective' && link.between.includes(terminal));
	return link?.kind === 'protective' ? link.device : null;
}

/** Where a part keeps the rating behind a terminal: a list with an entry for each position, and which entry. */
function holderOf(
	part: Part,
	terminal: string
): { readonly name: string; readonly counted: string; readonly index: number; readonly count: number } | null {
	const { definition, params } = describe(part);
	const probeA = (fuseBehind(part, terminal)?.ratingA ?? 0) + 1;
	for (const [name, schema] of Object.entries(definition?.params.shape ?? {})) {
		const counted = fieldMeta(schema).countedBy;
		if (!Array.isArray(params[name]) || counted === undefined) continue;
		const count = Number(params[counted]);
		for (let index = 0; index < count; index++) {
			const next = { ...part, params: { ...part.params, [name]: filled(params[name], count, null).with(index, probeA) as Param } };
			if (describe(next).problems.length === 0 && fuseBehind(next, terminal)?.ratingA === probeA) return { name, counted, index, count };
		}
	}
	return null;
}

const filled = (list: readonly unknown[], count: number, filler: unknown): unknown[] =>
	Array.from({ length: count }, (_, index) => list[index] ?? filler);

/** Whether a fuse can be fitted behind a terminal. */
export const hasHolder = (part: Part, terminal: string): boolean => holderOf(part, terminal) !== null;

/**
 * Parameters with which the terminal has a fuse of this rating, or none for null, and its position this name; null where
 * there is no such holder.
 */
export function fitted(part: Part, terminal: string, ratingA: number | null, label: string): Record<string, Param> | null {
	const holder = holderOf(part, terminal);
	if (!holder) return null;
	const { definition, params } = describe(part);
	const names = Object.entries(definition!.params.shape).flatMap(([name, schema]) => {
		const value = params[name];
		const isNames = name !== holder.name && Array.isArray(value) && fieldMeta(schema).countedBy === holder.counted;
		return isNames ? [[name, filled(value, holder.count, '').with(holder.index, label) as Param] as const] : [];
	});
	return {
		[holder.name]: filled(params[holder.name] as unknown[], holder.count, null).with(holder.index, ratingA) as Param,
		...Object.fromEntries(names)
	};
}
