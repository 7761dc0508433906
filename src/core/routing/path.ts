/** One conductor's route, given what is in its way and where others already run. */
import { boxOfPoints, boxesIntersect, inflateBox, simplifyOrthogonal, unionBoxes, type Box, type Point } from '#core/geometry';
import { Grid } from './grid.ts';
import { cheapestPath } from './search.ts';
import { sketchOf } from './sketch.ts';
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
	const attempts: Attempt[] = [];
	const first = { window: near, offsetsMm: [CLEARANCE_MM], keepOffMm: tidy, sparse: true, throughParts: false };
	const bodies = around.find(near);
	const sketch = bodies.length > MANY_BODIES ? sketchOf(from, to, bodies, around.tracks) : null;
	if (sketch) attempts.push({ ...first, ...sketch });
	attempts.push(first);
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
	/** Where the bodies' lines are drawn; the whole window when left out. */
	readonly corridor?: readonly Box[];
	readonly perMm?: number;
}

/** With more bodies than this between its ends, a route is sketched first. */
const MANY_BODIES = 30;

const EVERYWHERE: Box = { minX: -1e9, minY: -1e9, maxX: 1e9, maxY: 1e9 };

function tryPath(leg: Leg, attempt: Attempt, { find, tracks }: Around): Point[] | null {
	const { window, corridor } = attempt;
	const obstacles = find(window);
	const grid = new Grid({
		...attempt,
		obstacles,
		landmarks: corridor ? obstacles.filter((body) => corridor.some((box) => boxesIntersect(body, box))) : obstacles,
		corridor: corridor ?? [window],
		spread: corridor !== undefined,
		ends: [leg.from, leg.to],
		widthMm: leg.widthMm,
		tracks
	});
	return cheapestPath(grid, leg.from, leg.to, attempt.perMm);
}

/** The ends and a margin, and room to walk around whatever stands across the margin's edge. */
function windowOf(leg: Leg, margin: number, find: FindBoxes): Box {
	const inner = inflateBox(boxOfPoints([leg.from.at, leg.from.exit, leg.to.at, leg.to.exit]), margin);
	let window = inner;
	for (const box of find(inner)) if (boxesIntersect(box, inner)) window = unionBoxes(window, inflateBox(box, CLEARANCE_MM));
	return window;
}
