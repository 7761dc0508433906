import type { Diagram } from '#core/diagram';
import { finished, HANDOVERS } from './finish.ts';
import { ottersReachAfter, ottersReachBefore } from './otters-reach.ts';
import { pagemoorAfter, pagemoorBefore } from './pagemoor.ts';
import { ridgePostAfter, ridgePostBefore } from './ridge-post.ts';
import { skarvFellAfter, skarvFellBefore } from './skarv-fell.ts';

/** Each example by the name of its file in static/examples. */
export const BUILDERS: Readonly<Record<string, () => Diagram>> = {
	'ridge-post-before': ridgePostBefore,
	'ridge-post-after': () => finished(ridgePostAfter(), HANDOVERS['ridge-post-after']),
	'pagemoor-before': pagemoorBefore,
	'pagemoor-after': () => finished(pagemoorAfter(), HANDOVERS['pagemoor-after']),
	'otters-reach-before': ottersReachBefore,
	'otters-reach-after': () => finished(ottersReachAfter(), HANDOVERS['otters-reach-after']),
	'skarv-fell-before': skarvFellBefore,
	'skarv-fell-after': () => finished(skarvFellAfter(), HANDOVERS['skarv-fell-after'])
};
