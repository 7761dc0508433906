import * as z from 'zod';
import { ampsText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart, type Link } from '../define.ts';
import { amount, fuseRating } from '../fields.ts';
import { blockFields, blockFuse, MOUNTED, plate, post } from '../fuse-blocks.ts';
import { block, circle } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body } from '../sketch.ts';

const params = z.strictObject({
	fuseAA: fuseRating('Fuse a', 100),
	fuseBA: fuseRating('Fuse b', 100),
	...blockFields(),
	plateRatedA: amount('Plate rating', 'A', 300, { max: 1000, hint: 'both fuses together' }),
	...siteFields()
});

const POST_X_MM = 21;
const POST_Y_MM = 40;
const BOX = { minX: -38, minY: -15, maxX: 38, maxY: 62 };

const ratingText = (ratingA: number | null): string => (ratingA === null ? 'no fuse' : ampsText(ratingA));

export const twinFuseBlock = definePart({
	kind: 'twin-fuse-block',
	name: 'Twin terminal fuse block',
	help: 'Sits with one plate on a battery post or bus stud and carries two fuses on insulated posts. The plate carries both circuits.',
	group: 'protection',
	letter: 'F',
	params,
	mounts: MOUNTED,
	terminals: (block) => [
		plate(0, block, block.plateRatedA),
		post('a', 'post a', -POST_X_MM, POST_Y_MM, block, 'fuse-a', block.fuseAA),
		post('b', 'post b', POST_X_MM, POST_Y_MM, block, 'fuse-b', block.fuseBA)
	],
	links: (block) =>
		(
			[
				['a', block.fuseAA],
				['b', block.fuseBA]
			] as const
		).flatMap(([id, ratingA]): Link[] =>
			ratingA === null
				? []
				: [
						protectiveLink(`fuse-${id}`, ['plate', id], {
							ratingA,
							family: block.family,
							ratedV: block.fuseRatedV,
							breakingA: block.fuseBreakingA
						})
					]
		),
	outline: ({ family, fuseAA, fuseBA }) => [
		body(BOX, 5),
		block(0, 3, 62, 30, { fill: 'metal', stroke: 'metal-dark', width: 0.4, r: 4 }),
		circle(0, 0, 4.2, { fill: 'paper', stroke: 'metal-dark', width: 0.4 }),
		...(
			[
				[-POST_X_MM, fuseAA],
				[POST_X_MM, fuseBA]
			] as const
		).flatMap(([x, ratingA]) => [...blockFuse(family, x, POST_Y_MM, ratingA, 30)])
	],
	box: () => BOX,
	summary: (block) => `${ratingText(block.fuseAA)} / ${ratingText(block.fuseBA)}`
});
