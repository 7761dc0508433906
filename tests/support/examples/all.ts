import type { Diagram } from '#core/diagram';
import { ottersReachAfter, ottersReachBefore } from './otters-reach.ts';
import { pagemoorAfter, pagemoorBefore } from './pagemoor.ts';
import { ridgePostAfter, ridgePostBefore } from './ridge-post.ts';
import { skarvFellAfter, skarvFellBefore } from './skarv-fell.ts';

/** Each example by the name of its file in static/examples. */
export const BUILDERS: Readonly<Record<string, () => Diagram>> = {
	'ridge-post-before': ridgePostBefore,
	'ridge-post-after': ridgePostAfter,
	'pagemoor-before': pagemoorBefore,
	'pagemoor-after': pagemoorAfter,
	'otters-reach-before': ottersReachBefore,
	'otters-reach-after': ottersReachAfter,
	'skarv-fell-before': skarvFellBefore,
	'skarv-fell-after': skarvFellAfter
};
