/** Earlier states of a diagram that can be looked at and gone back to. */
import { parseDiagram, type Diagram, type ParseResult } from '#core/diagram';
import type { Cabinet } from './cabinet.ts';
import { sealVersion, unsealVersion, type DiagramKey, type VersionReason, type VersionRecord } from './records.ts';

/** While one works, a version is kept so often. */
export const VERSION_EVERY_MS = 10 * 60_000;
const MOST = 40;

/** Keeps the diagram as it is. Beyond 40, those kept by the clock go first, oldest first. */
export async function keepVersion(cabinet: Cabinet, id: DiagramKey, why: VersionReason, diagram: Diagram, nowMs: number): Promise<void> {
	const there = await cabinet.versions(id);
	// Two in one millisecond would have one key.
	const atMs = Math.max(nowMs, (there.at(-1)?.atMs ?? 0) + 1);
	const sealed = sealVersion(id, atMs, diagram);
	const same = there.at(-1);
	if (same && same.text === sealed.text && same.why === why) return;
	const version: VersionRecord = {
		id,
		atMs,
		why,
		parts: Object.keys(diagram.parts).length,
		conductors: Object.keys(diagram.conductors).length,
		...sealed
	};
	await cabinet.putVersion(version, surplus(there));
}

function surplus(versions: readonly VersionRecord[]): VersionRecord[] {
	const tooMany = versions.length + 1 - MOST;
	if (tooMany <= 0) return [];
	const byClock = versions.filter(({ why }) => why === 'worked');
	const others = versions.filter(({ why }) => why !== 'worked');
	return [...byClock, ...others].slice(0, tooMany);
}

/** The diagram of a version, through the same gate as a file. */
export const readVersion = (record: VersionRecord): ParseResult => parseDiagram(unsealVersion(record));
