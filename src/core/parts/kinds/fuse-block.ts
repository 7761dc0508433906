import * as z from 'zod';
import { ampsText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart } from '../define.ts';
import { amount, fuseRating } from '../fields.ts';
import { blockFields, plate, post } from '../fuse-blocks.ts';
import { body } from '../sketch.ts';

const params = z.strictObject({
	fuseA: fuseRating('Fuse', 100),
	...blockFields(),
	plateRatedA: amount('Plate rating', 'A', 200, { max: 1000 })
});

const PLATE_Y_MM = 0;
const POST_Y_MM = 38;

export const fuseBlock = definePart({
	kind: 'fuse-block',
	name: 'Terminal fuse block',
	help: 'Sits with its plate on a battery post or bus stud and carries one cube fuse on an insulated post: a fuse within millimetres of the source.',
	group: 'protection',
	letter: 'F',
	params,
	mounts: true,
	terminals: (block) => [plate(PLATE_Y_MM, block, block.plateRatedA), post('post', 'post', 0, POST_Y_MM, block, 'fuse', block.fuseA)],
	links: (block) =>
		block.fuseA === null
			? []
			: [
					protectiveLink('fuse', ['plate', 'post'], {
						ratingA: block.fuseA,
						family: 'cube',
						ratedV: block.fuseRatedV,
						breakingA: block.fuseBreakingA
					})
				],
	outline: () => [body({ minX: -16, minY: -14, maxX: 16, maxY: 54 })],
	box: () => ({ minX: -16, minY: -14, maxX: 16, maxY: 54 }),
	summary: (block) => (block.fuseA === null ? 'no fuse' : ampsText(block.fuseA))
});
