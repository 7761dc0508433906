import type { Memory } from '#core/memory';
import type { OperatingPoint } from '#core/solver';

/** An operating point that says what the last one under this name said is that one, so that what was made of it stands. */
export function keptPoint(name: unknown, now: OperatingPoint, memory: Memory): OperatingPoint {
	const before = memory.recall(name) as OperatingPoint | undefined;
	if (before && isSamePoint(before, now)) return before;
	memory.store(name, now);
	return now;
}

function isSamePoint(a: OperatingPoint, b: OperatingPoint): boolean {
	const keys = Object.keys(a) as (keyof OperatingPoint)[];
	return keys.length === Object.keys(b).length && keys.every((key) => isSameValue(a[key], b[key]));
}

function isSameValue(a: OperatingPoint[keyof OperatingPoint], b: typeof a): boolean {
	if (typeof a !== 'object' || typeof b !== 'object') return Object.is(a, b);
	if (a.length !== b.length) return false;
	for (let i = 0; i < a.length; i++) if (!Object.is(a[i], b[i])) return false;
	return true;
}
