import { DiagramSchema, type Diagram } from './schema.ts';

/** Fields in the schema's order; records by id, numbers inside ids counted ("C2" before "C10"). */
const FIELDS: readonly string[] = [
	...Object.keys(DiagramSchema.shape),
	...Object.keys(DiagramSchema.shape.parts.valueType.shape),
	...Object.keys(DiagramSchema.shape.conductors.valueType.shape),
	...Object.keys(DiagramSchema.shape.titleBlock.shape)
];

/**
 * The file's text: readable, and the same for the same diagram whatever order it was drawn in, so that two saved
 * versions can be compared line by line. Ends with a newline.
 */
export const serializeDiagram = (diagram: Diagram): string => `${JSON.stringify(ordered(diagram), null, '\t')}\n`;

function ordered(value: unknown): unknown {
	if (Array.isArray(value)) return value.map(ordered);
	if (typeof value !== 'object' || value === null) return value;
	const entries = Object.entries(value).sort(([a], [b]) => compareKeys(a, b));
	return Object.fromEntries(entries.map(([key, inner]) => [key, ordered(inner)]));
}

function compareKeys(a: string, b: string): number {
	const places = FIELDS.indexOf(a) - FIELDS.indexOf(b);
	if (FIELDS.includes(a) && FIELDS.includes(b) && places !== 0) return places;
	return naturally(a, b);
}

/** "C2" before "C10", by code unit otherwise: no locale, so that every machine writes the same file. */
export function naturally(a: string, b: string): number {
	const left = a.match(/\d+|\D+/g) ?? [];
	const right = b.match(/\d+|\D+/g) ?? [];
	for (let index = 0; index < Math.min(left.length, right.length); index += 1) {
		const [p, q] = [left[index]!, right[index]!];
		if (p === q) continue;
		const numeric = /^\d/.test(p) && /^\d/.test(q) ? Number(p) - Number(q) : 0;
		return numeric !== 0 ? numeric : p < q ? -1 : 1;
	}
	return left.length - right.length;
}
