/** Parameters of parts that make up a day: hours, shares, peak of an array. Asked of the definition, so that no form knows a kind. */
import type * as z from 'zod';
import type { Diagram, PartId } from '#core/diagram';
import { describe, fieldMeta, type FieldMeta } from '#core/parts';
import { levelGroups } from '../inspector/level-groups.ts';

export interface DailyField {
	readonly name: string;
	readonly schema: z.ZodType;
	readonly meta: FieldMeta;
	readonly value: unknown;
}

export function dailyFields({ parts }: Diagram, id: PartId): readonly DailyField[] {
	const { definition, params } = describe(parts[id]!);
	return Object.entries(definition?.params.shape ?? {}).flatMap(([name, schema]) => {
		const meta = fieldMeta(schema as z.ZodType);
		return meta.daily ? [{ name, schema: schema as z.ZodType, meta, value: params[name] }] : [];
	});
}

export type DayRole = 'loads' | 'sources' | 'batteries';

/** Parts with a day, by what they are to it; converters have none of their own. */
export function dayParts(diagram: Diagram): Readonly<Record<DayRole, readonly PartId[]>> {
	const of = (role: DayRole) =>
		(levelGroups(diagram).find((group) => group.role === role)?.parts ?? []).filter((part) => dailyFields(diagram, part).length > 0);
	return { loads: of('loads'), sources: of('sources'), batteries: of('batteries') };
}
