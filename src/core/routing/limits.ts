/** How far a piece may move sideways without cutting a body or turning its neighbours around. */
import type { FindBoxes } from './stub.ts';
import { otherAxis, type Axis, type Piece } from './run.ts';
import { BODY_GAP_MM } from './settings.ts';
import type { Box } from '#core/geometry';

const REACH_MM = 120;

export function limitsOf(piece: Piece, axis: Axis, find: FindBoxes): { low: number; high: number } {
	const { at, run, from, to } = piece;
	const margin = run.widthMm / 2 + BODY_GAP_MM;
	let low = at - REACH_MM;
	let high = at + REACH_MM;
	for (const box of find(windowOf(piece, axis, margin))) {
		const [boxLow, boxHigh, boxFrom, boxTo] =
			axis === 'x' ? [box.minX, box.maxX, box.minY, box.maxY] : [box.minY, box.maxY, box.minX, box.maxX];
		const beside = from < boxTo && to > boxFrom;
		const close = from - margin < boxTo && to + margin > boxFrom;
		if (!close) continue;
		if (at >= boxHigh) low = Math.max(low, Math.min(at, boxHigh + margin));
		else if (at <= boxLow) high = Math.min(high, Math.max(at, boxLow - margin));
		else if (beside) return { low: at, high: at };
	}
	for (const neighbour of [run.points[piece.index - 2], run.points[piece.index + 1]]) {
		if (!neighbour) continue;
		const away = at - neighbour[axis];
		if (Math.abs(away) < 1) continue;
		const ofTerminal = neighbour === run.points[0] || neighbour === run.points.at(-1);
		const stop = ofTerminal ? neighbour[axis] + Math.sign(away) : neighbour[axis] + away / 2;
		if (away > 0) low = Math.max(low, stop);
		else high = Math.min(high, stop);
	}
	return { low: Math.min(low, at), high: Math.max(high, at) };
}

function windowOf({ at, from, to }: Piece, axis: Axis, margin: number): Box {
	const across = REACH_MM + margin;
	return otherAxis(axis) === 'y'
		? { minX: at - across, maxX: at + across, minY: from - margin, maxY: to + margin }
		: { minX: from - margin, maxX: to + margin, minY: at - across, maxY: at + across };
}
