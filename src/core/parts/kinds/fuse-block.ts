import * as z from 'zod';
import { ampsText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart } from '../define.ts';
import { amount, fuseRating } from '../fields.ts';
import { blockFields, blockFuse, MOUNTED, plate, post } from '../fuse-blocks.ts';
import { block, circle } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body } from '../sketch.ts';

const params = z.strictObject({
	fuseA: fuseRating('Fuse', 100),
	...blockFields(),
	plateRatedA: amount('Plate rating', 'A', 200, { max: 1000 }),
	...siteFields()
});

const PLATE_Y_MM = 0;
const POST_Y_MM = 40;
const BOX = { minX: -17, minY: -15, maxX: 17, maxY: 62 };

export const fuseBlock = definePart({
	kind: 'fuse-block',
	name: 'Terminal fuse block',
	help: 'Sits with its plate on a battery post or bus stud and carries one fuse on an insulated post: a fuse within millimetres of the source.',
	group: 'protection',
	letter: 'F',
	params,
	mounts: MOUNTED,
	terminals: (block) => [plate(PLATE_Y_MM, block, block.plateRatedA), post('post', 'post', 0, POST_Y_MM, block, 'fuse', block.fuseA)],
	links: (block) =>
		block.fuseA === null
			? []
			: [
					protectiveLink('fuse', ['plate', 'post'], {
						ratingA: block.fuseA,
						family: block.family,
						ratedV: block.fuseRatedV,
						breakingA: block.fuseBreakingA
					})
				],
	outline: (fuse) => [
		body(BOX, 5),
		block(0, 3, 24, 30, { fill: 'metal', stroke: 'metal-dark', width: 0.4, r: 4 }),
		circle(0, PLATE_Y_MM, 4.2, { fill: 'paper', stroke: 'metal-dark', width: 0.4 }),
		...blockFuse(fuse.family, 0, POST_Y_MM, fuse.fuseA, 26)
	],
	box: () => BOX,
	summary: (block) => (block.fuseA === null ? 'no fuse' : ampsText(block.fuseA))
});
