/** Parameters of a part as its form shows them: those everybody sets, and those of its place, folded; what the part maker asks for is not among them. */
import type * as z from 'zod';
import { fieldMeta, type PartDefinition } from '#core/parts';

type Field = [name: string, schema: z.ZodType];

export function bySection(definition: PartDefinition | null): { readonly main: readonly Field[]; readonly site: readonly Field[] } {
	const fields = Object.entries(definition?.params.shape ?? {}) as Field[];
	const of = (section: 'site' | undefined) => fields.filter(([, schema]) => fieldMeta(schema).section === section);
	return { main: of(undefined), site: of('site') };
}
