import { from0 } from './migrations/from-0.ts';
import type { Raw } from './migrations/raw.ts';
import { VERSION } from './schema.ts';

/** One step each: the entry at n makes version n + 1 out of version n. Never changed once files of n + 1 exist. */
const STEPS: readonly ((raw: Raw) => Raw)[] = [from0];

/** Brings a file of an older version up to this one. The result is as untyped as the file was. */
export function migrate(raw: Raw, version: number): Raw {
	let current = raw;
	for (const step of STEPS.slice(version, VERSION)) current = step(current);
	return current;
}

/** The oldest version that can still be read. */
export const OLDEST = VERSION - STEPS.length;
