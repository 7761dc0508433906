/** Parameters of a part as its form shows them: those everybody sets, and those of its place, folded. */
import type * as z from 'zod';
import { fieldMeta, type PartDefinition } from '#core/parts';

type Field = [name: string, schema: z.ZodType];

export function bySection(definition: PartDefinition | null): { readonly main: readonly Field[]; readonly site: readonly Field[] } {
	const fields = Object.entries(definition?.params.shape ?? {}) as Field[];
	const isSite = ([, schema]: Field) => fieldMeta(schema).section === 'site';
	return { main: fields.filter((field) => !isSite(field)), site: fields.filter(isSite) };
}
