/**
 * The lines of one direction on which a route may run. Each is of use only near what it was drawn for: from there on
 * to the next body to both sides. That keeps the search small without losing shortest ways.
 */
import type { Stretch } from './stretch-bins.ts';

export interface Span {
	readonly from: number;
	readonly to: number;
}

export interface Line {
	readonly at: number;
	/** What the line was drawn for, along the line. */
	readonly spans: Span[];
}

/** A body's extent across the lines, then along them. */
export interface Extent extends Span {
	readonly low: number;
	readonly high: number;
}

export interface LinesInput {
	/** Coordinate across and along of each end's exit. */
	readonly ends: readonly { readonly at: number; readonly along: number }[];
	readonly bodies: readonly Extent[];
	readonly offsetsMm: readonly number[];
	/** Lines outside are left out. */
	readonly window: Span;
	readonly parallel: readonly Stretch[];
	/** Proper distance to a conductor of that width. */
	readonly spacing: (widthMm: number) => number;
	readonly widthMm: number;
}

/**
 * In order of position. Lines of the ends are exact and win over others close by, which would only make kinks. A
 * line on which a held stretch is in the way gets lines beside that stretch.
 */
export function linesFor({ ends, bodies, offsetsMm, window, parallel, spacing, widthMm }: LinesInput): Line[] {
	const lines: Line[] = [];
	const lane = spacing(widthMm);
	for (const { at, along } of ends) {
		const span = { from: along, to: along };
		lines.push({ at, spans: [span] }, { at: at - lane, spans: [span] }, { at: at + lane, spans: [span] });
	}
	const exact = lines.filter((_, i) => i % 3 === 0);
	const kinkMm = spacing(0) / 2;
	for (const { low, high, from, to } of bodies) {
		for (const offset of offsetsMm) {
			const span = { from: from - offset, to: to + offset };
			for (const at of [low - offset, high + offset]) {
				if (at < window.from || at > window.to) continue;
				const close = exact.find((line) => Math.abs(line.at - at) <= kinkMm);
				if (close) close.spans.push(span);
				if (!close || (offset === 0 && close.at !== at)) lines.push({ at, spans: [span] });
			}
		}
	}
	const own = lines.length;
	for (const stretch of parallel) {
		if (!stretch.held) continue;
		const room = spacing(stretch.widthMm);
		for (let i = 0; i < own; i++) {
			if (Math.abs(lines[i]!.at - stretch.at) >= room || !inTheWay(stretch, lines[i]!, i < exact.length * 3)) continue;
			lines.push({ at: stretch.at - room, spans: [stretch] }, { at: stretch.at + room, spans: [stretch] });
			break;
		}
	}
	return merged(lines.sort((a, b) => a.at - b.at));
}

/** Lines of bodies matter at the bodies, those of the ends all along. */
const inTheWay = (stretch: Span, { spans }: Line, always: boolean): boolean =>
	always || spans.some(({ from, to }) => from < stretch.to && to > stretch.from);

function merged(sorted: readonly Line[]): Line[] {
	const lines: Line[] = [];
	for (const line of sorted) {
		const last = lines.at(-1);
		if (last?.at === line.at) last.spans.push(...line.spans);
		else lines.push({ at: line.at, spans: [...line.spans] });
	}
	return lines;
}

/** The span, carried on in both directions to the next of the blocked stretches. */
export function carriedOn({ from, to }: Span, blocked: readonly Span[]): Span {
	let low = -Infinity;
	let high = Infinity;
	for (const block of blocked) {
		if (block.from < from) low = Math.max(low, Math.min(block.to, from));
		if (block.to > to) high = Math.min(high, Math.max(block.from, to));
	}
	return { from: low, to: high };
}
