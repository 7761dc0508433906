/** Parameters of a part as its form shows them: those everybody sets, and those of its place, folded; and what only the part maker asks for. */
import type * as z from 'zod';
import { fieldMeta, type PartDefinition } from '#core/parts';

type Field = [name: string, schema: z.ZodType];

export function bySection(definition: PartDefinition | null): Readonly<Record<'main' | 'site' | 'maker', readonly Field[]>> {
	const fields = Object.entries(definition?.params.shape ?? {}) as Field[];
	const of = (section: 'site' | 'maker' | undefined) => fields.filter(([, schema]) => fieldMeta(schema).section === section);
	return { main: of(undefined), site: of('site'), maker: of('maker') };
}
