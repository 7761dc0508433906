import type { Sourced } from '#core/tables';
import type { Terminal } from '#core/parts';

/** Air between the nut and the closed cover, mm: common practice, no source. */
export const COVER_AIR_MM = 2;

/**
 * Cover over the end stud of a bus, mm, for parts that do not give theirs: 2 AWG is about the largest cable that leaves
 * under it, 1/0 AWG and larger do not, and two lugs under one nut do not fit.
 */
export const USUAL_END_COVER: Sourced<{ readonly heightMm: number; readonly slotMm: number }> = {
	value: { heightMm: 16, slotMm: 13 },
	source: 'common practice, no source',
	confidence: 'common-practice'
};

/** The terminal as it would be under the usual cover, where it gives none of its own. */
export const underUsualCover = (terminal: Terminal): Terminal => ({
	...terminal,
	coverHeightMm: terminal.coverHeightMm ?? USUAL_END_COVER.value.heightMm,
	coverSlotMm: terminal.coverSlotMm ?? USUAL_END_COVER.value.slotMm
});
