import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, choice, count, optionalAmount, thread } from '../fields.ts';
import { circle } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox, fixingHole } from '../sketch.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	pole: choice('Pole', 'either', { either: 'either', positive: 'positive', negative: 'negative' }),
	thread: thread('Stud thread', 'M10'),
	usableLengthMm: optionalAmount('Usable stud length', 'mm', { max: 100, whenEmpty: 'usual for the thread', hint: 'seat to thread end' }),
	ratedA: amount('Rating', 'A', 400, { max: 3000 }),
	landings: count('Landings', 4, 1, 8, { hint: 'terminals it may carry, by its maker' }),
	...siteFields()
});

const BOX = centredBox(52, 52);

export const linkPost = definePart({
	kind: 'link-post',
	name: 'Link post',
	help: 'One insulated stud on a base, where a few heavy conductors meet: for example the strings of a bank.',
	group: 'distribution',
	letter: 'X',
	params,
	terminals: (post) => [
		stud('stud', 'stud', { x: 0, y: 0 }, 'south', {
			thread: post.thread,
			role: post.pole,
			otherSides: ['north', 'east', 'west'],
			usableLengthMm: post.usableLengthMm,
			maxTerminals: post.landings,
			ratedA: post.ratedA
		})
	],
	links: () => [],
	outline: () => [
		body(BOX, 8),
		...[-1, 1].flatMap((x) => [-1, 1].map((y) => fixingHole(x * 20, y * 20))),
		circle(0, 0, 19, { fill: 'case-raised', stroke: 'case-edge', width: 0.5 }),
		circle(0, 0, 15.5, { fill: 'metal', stroke: 'metal-dark', width: 0.4 })
	],
	box: () => BOX,
	summary: (post) => `${post.thread}, ${ampsText(post.ratedA)}`
});
