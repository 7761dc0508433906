/** Which control a parameter's schema calls for. Asked of its JSON Schema, so that no form knows a part. */
import * as z from 'zod';

export interface NumberControl {
	readonly kind: 'number';
	readonly nullable: boolean;
	readonly min: number;
	readonly max: number;
	readonly whole: boolean;
}

export type Control =
	| { readonly kind: 'flag' }
	| { readonly kind: 'choice' }
	| { readonly kind: 'text' }
	| NumberControl
	| { readonly kind: 'list'; readonly of: NumberControl | { readonly kind: 'text' } };

interface JsonSchema {
	readonly type?: string;
	readonly enum?: readonly unknown[];
	readonly anyOf?: readonly JsonSchema[];
	readonly items?: JsonSchema;
	readonly minimum?: number;
	readonly exclusiveMinimum?: number;
	readonly maximum?: number;
}

export const controlOf = (schema: z.ZodType): Control => fromJson(z.toJSONSchema(schema, { io: 'input' }) as JsonSchema);

function fromJson(json: JsonSchema): Control {
	if (json.enum) return { kind: 'choice' };
	if (json.type === 'boolean') return { kind: 'flag' };
	if (json.type === 'array') {
		const of = json.items ? fromJson(json.items) : null;
		return { kind: 'list', of: of?.kind === 'number' ? of : { kind: 'text' } };
	}
	return numberFrom(json) ?? { kind: 'text' };
}

function numberFrom(json: JsonSchema): NumberControl | null {
	const alternatives = json.anyOf ?? [json];
	const number = alternatives.find(({ type }) => type === 'number' || type === 'integer');
	if (!number) return null;
	return {
		kind: 'number',
		nullable: alternatives.some(({ type }) => type === 'null'),
		// An open limit is left to the schema itself: zero is refused there, in words.
		min: number.minimum ?? number.exclusiveMinimum ?? -Infinity,
		max: number.maximum ?? Infinity,
		whole: number.type === 'integer'
	};
}
