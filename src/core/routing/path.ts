/** One conductor's route, given what is in its way and where others already run. */
import { boxOfPoints, boxesIntersect, inflateBox, simplifyOrthogonal, unionBoxes, type Box, type Point } from '#core/geometry';
import { Grid } from './grid.ts';
import { cheapestPath } from './search.ts';
import { CLEARANCE_MM, BODY_GAP_MM, WINDOW_MM } from './settings.ts';
import type { FindBoxes, Stub } from './stub.ts';
import type { Tracks } from './tracks.ts';

export interface Around {
	readonly find: FindBoxes;
	/** Conductors already routed; null to ignore them. */
	readonly tracks: Tracks | null;
	/** False while dragging: one small window, no second look. */
	readonly thorough: boolean;
}

/**
 * Tries what is tidy first, then narrower gaps and longer ways round, then along the bodies' very edges, and at
 * last straight through what cannot be avoided. The last one finds a way always.
 */
export function pathOf(from: Stub, to: Stub, widthMm: number, around: Around): Point[] {
	const leg = { from, to, widthMm };
	const tidy = Math.min(widthMm / 2 + BODY_GAP_MM, CLEARANCE_MM);
	const near = windowOf(leg, WINDOW_MM, around.find);
	const attempts: Attempt[] = [{ window: near, offsetsMm: [CLEARANCE_MM], keepOffMm: tidy, sparse: true, throughParts: false }];
	if (around.thorough) {
		const wide = windowOf(leg, WINDOW_MM * 4, around.find);
		attempts.push(
			{ window: near, offsetsMm: [CLEARANCE_MM, tidy, 0], keepOffMm: 0, sparse: false, throughParts: false },
			{ window: wide, offsetsMm: [CLEARANCE_MM], keepOffMm: tidy, sparse: false, throughParts: false },
			{ window: EVERYWHERE, offsetsMm: [CLEARANCE_MM, 0], keepOffMm: 0, sparse: false, throughParts: false }
		);
	}
	attempts.push({ window: near, offsetsMm: [CLEARANCE_MM], keepOffMm: 0, sparse: false, throughParts: true });
	for (const attempt of attempts) {
		const path = tryPath(leg, attempt, around);
		if (path) return path;
	}
	// Only reached when the window's own lines do not join the ends, which the anchors' lines always do.
	return simplifyOrthogonal([from.exit, { x: to.exit.x, y: from.exit.y }, to.exit]);
}

interface Leg {
	readonly from: Stub;
	readonly to: Stub;
	readonly widthMm: number;
}

interface Attempt {
	readonly window: Box;
	readonly offsetsMm: readonly number[];
	readonly keepOffMm: number;
	readonly sparse: boolean;
	readonly throughParts: boolean;
}

const EVERYWHERE: Box = { minX: -1e9, minY: -1e9, maxX: 1e9, maxY: 1e9 };

function tryPath(leg: Leg, attempt: Attempt, { find, tracks }: Around): Point[] | null {
	const { window } = attempt;
	const grid = new Grid({
		...attempt,
		obstacles: find(window),
		ends: [leg.from, leg.to],
		widthMm: leg.widthMm,
		horizontal: tracks?.horizontalIn(window) ?? [],
		vertical: tracks?.verticalIn(window) ?? []
	});
	return cheapestPath(grid, leg.from, leg.to);
}

/** The ends and a margin, and room to walk around whatever stands across the margin's edge. */
function windowOf(leg: Leg, margin: number, find: FindBoxes): Box {
	const inner = inflateBox(boxOfPoints([leg.from.at, leg.from.exit, leg.to.at, leg.to.exit]), margin);
	let window = inner;
	for (const box of find(inner)) if (boxesIntersect(box, inner)) window = unionBoxes(window, inflateBox(box, CLEARANCE_MM));
	return window;
}
