import * as z from 'zod';
import { ampsText } from '#core/units';
import { circle } from '#core/graphics';
import { definePart, type Link } from '../define.ts';
import { amount, choice, count, lengthMm, optionalAmount, thread } from '../fields.ts';
import { siteFields } from '../site.ts';
import { body, metal } from '../sketch.ts';
import { stud } from '../terminals.ts';

/** Two faces pressed together under a post: common practice, no source. */
const FACE_OHM = 40e-6;

const params = z.strictObject({
	pole: choice('Pole', 'either', { either: 'either', positive: 'positive', negative: 'negative' }),
	faces: count('Faces', 2, 1, 2, { hint: 'places on it where lugs land, each with its own nut' }),
	hostThread: thread('Fits stud', 'M8'),
	thread: thread('Own stud thread', 'M8'),
	usableLengthMm: optionalAmount('Usable length of each stud', 'mm', {
		max: 100,
		whenEmpty: 'usual for the thread',
		hint: 'seat to thread end'
	}),
	// Brass, common practice, no source: 150 A on M8, 200 A on M10.
	ratedA: amount('Rating', 'A', 150, { max: 2000, hint: 'all of its faces together' }),
	landings: count('Landings on each face', 2, 1, 4, { hint: 'terminals it may carry, by its maker' }),
	plateMm: lengthMm('Height on the stud it sits on', 3, 1, 30),
	...siteFields()
});

const PITCH_MM = 26;
const box = ({ faces }: { faces: number }) => ({ minX: -13, minY: -13, maxX: 13, maxY: 20 + (faces - 1) * PITCH_MM + 21 });
const faceY = (index: number): number => 28 + index * PITCH_MM;

export const adapterPost = definePart({
	kind: 'adapter-post',
	name: 'Adapter post',
	help: 'Sits on a stud that has no room left and offers one or two faces more, or a stud of another size. It protects nothing, and everything on it passes its one joint.',
	group: 'distribution',
	letter: 'X',
	params,
	mounts: { noun: 'adapter post', plateMm: ({ plateMm }) => plateMm },
	terminals: (post) => [
		stud('plate', 'foot', { x: 0, y: 0 }, 'north', {
			thread: post.hostThread,
			role: post.pole,
			maxTerminals: 1,
			ratedA: post.ratedA,
			mountingPlate: true,
			acceptsBlock: false
		}),
		...Array.from({ length: post.faces }, (_, index) =>
			stud(String(index + 1), `face ${index + 1}`, { x: 0, y: faceY(index) }, 'south', {
				thread: post.thread,
				role: post.pole,
				otherSides: ['east', 'west'],
				usableLengthMm: post.usableLengthMm,
				maxTerminals: post.landings,
				ratedA: post.ratedA
			})
		)
	],
	links: (post) =>
		Array.from({ length: post.faces }, (_, index): Link => ({
			kind: 'segment',
			id: `face-${index + 1}`,
			between: [index === 0 ? 'plate' : '1', String(index + 1)],
			resistanceOhm: FACE_OHM,
			// Its foot's rating says it once.
			ratedA: null
		})),
	outline: (post) => [
		body(box(post), 6),
		metal(-10, -9, 20, faceY(post.faces - 1) + 20, 4),
		circle(0, 0, 4.2, { fill: 'paper', stroke: 'metal-dark', width: 0.4 })
	],
	box,
	summary: (post) => `${post.faces} × ${post.thread} on ${post.hostThread}, ${ampsText(post.ratedA)}`
});
