/** What a tidy route is worth, in millimetres of conductor. Tuned by eye on drawings of real systems. */

/** Distance a route likes to keep from a part's body. */
export const CLEARANCE_MM = 16;

/** Space between the insulation of conductors side by side, and between insulation and a part's body. */
export const LANE_GAP_MM = 4;
export const BODY_GAP_MM = 2;

/** A bend is worth a detour of this much; a crossing a little more than one bend, less than two. */
export const BEND_MM = 40;
export const CROSSING_MM = 55;

/**
 * Sharing a track is cheap, because lanes are spread afterwards and a bundle is tidier than scattered conductors.
 * Running along another conductor's first or last stretch is dear, since that one cannot give way.
 */
export const SHARED_TRACK_PER_MM = 0.02;
export const BLOCKED_TRACK_PER_MM = 3;

/** Running too near to such a stretch, without lying on it. */
export const CLOSE_TRACK_PER_MM = 0.5;

/** For a long conductor, running where more than this many run near already. */
export const ROOM_BESIDE = 1;
export const CROWDED_PER_MM = 1;

/** Per millimetre inside a part, when there is no other way at all. */
export const THROUGH_PART_PER_MM = 50;

/** Coordinates closer than this are one line. */
export const SAME_LINE_MM = 0.01;

/** How far beyond its two ends a route may look for a way round, at first. */
export const WINDOW_MM = 80;

export const laneSpacingMm = (widthMm: number, otherMm: number): number => (widthMm + otherMm) / 2 + LANE_GAP_MM;
