/**
 * Constructors for parameters. A parameter's schema carries its default and its words for the inspector, so that
 * form, file and definition cannot differ.
 */
import * as z from 'zod';
import { FUSE_FAMILIES, fuseFamily as familyOf, THREADS, type FuseFamilyId, type ThreadId } from '#core/tables';

/** What the inspector shows beside a parameter. */
export interface FieldMeta {
	readonly title: string;
	readonly unit?: string;
	/** Where the unit depends on another parameter: which, and the unit for each of its values. */
	readonly unitBy?: { readonly param: string; readonly units: Readonly<Record<string, string>> };
	readonly hint?: string;
	readonly options?: readonly { readonly value: string | number; readonly label: string }[];
	/** What an empty field means: "worked out from the capacity". */
	readonly whenEmpty?: string;
	/** On a list with a value for each position: the parameter that holds their number. */
	readonly countedBy?: string;
	/** Shown apart, folded: what most parts leave as it is. Or not here: what the part maker asks for. */
	readonly section?: 'site' | 'maker';
	/** Names a stud of the same part, or a point inside it. */
	readonly refers?: 'stud' | 'point';
	/** Part of a day of use: asked for in the energy balance too. */
	readonly daily?: true;
}

/** The words of a parameter; the programmer's fault when it has none. */
export function fieldMeta(schema: z.ZodType): FieldMeta {
	const meta = schema.meta();
	if (!meta?.title) throw new Error('A parameter needs a title: build it with a constructor from fields.ts.');
	return meta as unknown as FieldMeta;
}

/** Smaller amounts are slips of the keyboard, and would divide into infinities. */
const LEAST = 0.001;

type Words = Omit<FieldMeta, 'title'>;

const withMeta = <Schema extends z.ZodType>(schema: Schema, meta: FieldMeta): Schema => schema.meta({ ...meta });

/** A number of at least a thousandth. */
export const amount = (title: string, unit: string, standard: number, words: Words & { readonly max?: number } = {}) => {
	const { max = 100_000, ...rest } = words;
	return withMeta(z.number().min(LEAST).max(max).default(standard), { title, unit, ...rest });
};

/** A number of at least a thousandth, or null: not known, or worked out from other parameters. */
export const optionalAmount = (title: string, unit: string, words: Words & { readonly max?: number } = {}) => {
	const { max = 100_000, ...rest } = words;
	return withMeta(z.number().min(LEAST).max(max).nullable().default(null), { title, unit, ...rest });
};

/** A temperature, or null: not known. */
export const optionalTemperature = (title: string, words: Words = {}) =>
	withMeta(z.number().min(-90).max(250).nullable().default(null), { title, unit: '°C', ...words });

/** Hours of use in a day, 0 to 24; null: not given, and then not counted. */
export const hoursADay = (title: string, words: Words = {}) =>
	withMeta(z.number().min(0).max(24).nullable().default(null), { title, unit: 'h', whenEmpty: 'not given', daily: true, ...words });

/** The fuse in one place; null is an empty holder, which passes no current. */
export const fuseRating = (title: string, standard: number, words: Words = {}) =>
	withMeta(z.number().min(LEAST).max(2000).nullable().default(standard), { title, unit: 'A', whenEmpty: 'no fuse fitted', ...words });

/** A length on the drawing, in millimetres. */
export const lengthMm = (title: string, standard: number, min: number, max: number, words: Words = {}) =>
	withMeta(z.number().min(min).max(max).default(standard), { title, unit: 'mm', ...words });

export const count = (title: string, standard: number, min: number, max: number, words: Words = {}) =>
	withMeta(z.int().min(min).max(max).default(standard), { title, ...words });

export const share = (title: string, standard: number, words: Words = {}) =>
	withMeta(z.number().min(0.1).max(1).default(standard), { title, hint: 'between 0.1 and 1', ...words });

/** A share between 0.05 and 1, or null: worked out from other parameters. */
export const optionalShare = (title: string, words: Words = {}) =>
	withMeta(z.number().min(0.05).max(1).nullable().default(null), { title, hint: 'between 0.05 and 1', ...words });

export const words = (title: string, standard: string, max: number, rest: Words = {}) =>
	withMeta(z.string().max(max).default(standard), { title, ...rest });

export const flag = (title: string, standard: boolean, words: Words = {}) => withMeta(z.boolean().default(standard), { title, ...words });

export function choice<const Labels extends Record<string, string>>(
	title: string,
	standard: keyof Labels & string,
	labels: Labels,
	words: Words = {}
) {
	const values = Object.keys(labels) as [keyof Labels & string, ...(keyof Labels & string)[]];
	const options = values.map((value) => ({ value, label: labels[value]! }));
	return withMeta(z.enum(values).default(standard as never), { title, options, ...words });
}

export function numberChoice<const Value extends number>(
	title: string,
	unit: string,
	standard: Value,
	values: readonly Value[],
	words: Words = {}
) {
	const options = values.map((value) => ({ value, label: `${value} ${unit}` }));
	return withMeta(z.literal([...values]).default(standard as never), { title, unit, options, ...words });
}

export const thread = (title: string, standard: ThreadId, words: Words = {}) =>
	withMeta(z.enum(THREADS).default(standard), { title, options: THREADS.map((value) => ({ value, label: value })), ...words });

const familyText = (id: FuseFamilyId): string => `${familyOf(id).name} (${familyOf(id).standard})`;

export const fuseFamily = (title: string, standard: FuseFamilyId, families: readonly FuseFamilyId[] = FUSE_FAMILIES, words: Words = {}) =>
	withMeta(z.enum(families as [FuseFamilyId, ...FuseFamilyId[]]).default(standard), {
		title,
		options: families.map((value) => ({ value, label: familyText(value) })),
		...words
	});

/** A rating for each position; null is an empty position. May be shorter than the number of positions. */
export const ratings = (title: string, standard: readonly (number | null)[], countedBy: string, words: Words = {}) =>
	withMeta(
		z
			.array(z.number().min(LEAST).max(2000).nullable())
			.max(64)
			.default([...standard]),
		{
			title,
			unit: 'A',
			countedBy,
			whenEmpty: 'no fuse fitted',
			...words
		}
	);

/** A name for each position. */
export const names = (title: string, countedBy: string, words: Words = {}) =>
	withMeta(z.array(z.string().max(100)).max(64).default([]), { title, countedBy, ...words });

/** The list cut or filled to a number of positions. */
export const adapted = <Value>(values: readonly Value[], positions: number, filler: Value): readonly Value[] =>
	Array.from({ length: positions }, (_, index) => (index < values.length ? values[index]! : filler));
