import type { Diagram, PartId } from '#core/diagram';
import { describe, type Terminal } from '#core/parts';
import { thread, type ThreadId } from '#core/tables';

/** A hole on a stud. */
export interface HoleFit {
	readonly holeMm: number;
	readonly studMm: number;
	/** Negative where the hole does not go over the stud. */
	readonly slackMm: number;
	readonly verdict: 'fits' | 'loose' | 'too-loose' | 'too-small';
}

/** Slack up to which pad and washer still cover the seat: common practice, no source. */
const LOOSE_MM = 0.6;
const TOO_LOOSE_MM = 1.2;

/** A lug, ring or plate made for one thread on a stud of another. */
export function holeFit(madeFor: ThreadId, stud: ThreadId): HoleFit {
	const holeMm = thread(madeFor).holeMm;
	const studMm = thread(stud).majorMm;
	const slackMm = holeMm - studMm;
	const verdict = slackMm < 0 ? 'too-small' : slackMm <= LOOSE_MM ? 'fits' : slackMm <= TOO_LOOSE_MM ? 'loose' : 'too-loose';
	return { holeMm, studMm, slackMm, verdict };
}

/** A block's plate on a stud; null where either has no thread or the block is not known. A little slack is let pass. */
export function blockFit({ parts }: Diagram, block: PartId, { thread: stud }: Terminal): HoleFit | null {
	const plate = Object.hasOwn(parts, block) ? describe(parts[block]!).terminals.find(({ mountingPlate }) => mountingPlate) : undefined;
	if (!plate?.thread || stud === null) return null;
	const fit = holeFit(plate.thread, stud);
	return fit.verdict === 'loose' ? { ...fit, verdict: 'fits' } : fit;
}
