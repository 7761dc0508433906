/** Files of other versions are untyped: a migration changes what it knows and leaves the rest to the schema. */
export type Raw = Readonly<Record<string, unknown>>;

export const isRecord = (value: unknown): value is Raw => typeof value === 'object' && value !== null && !Array.isArray(value);

export const mapValues = (record: Raw, change: (value: unknown) => unknown): Raw =>
	Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value)]));
