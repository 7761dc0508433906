import type { Link, LinkEnd } from './define.ts';

/** The metal of chassis or hull: one node for the whole diagram, whichever part's link names it. */
export const CHASSIS: LinkEnd = '@@chassis';

/** From a stud through sheet metal to the rest of the chassis: common practice, no source. */
const CHASSIS_OHM = 0.0015;

/** Joins a stud to the metalwork it is bolted to, and so to all other studs on it. */
export const chassisLink = (stud: LinkEnd): Link => ({
	kind: 'segment',
	id: 'metalwork',
	between: [stud, CHASSIS],
	resistanceOhm: CHASSIS_OHM,
	ratedA: null
});
