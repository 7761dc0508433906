import * as z from 'zod';
import { ampsText, decimalText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart } from '../define.ts';
import { amount, choice, flag, optionalAmount, thread } from '../fields.ts';
import { block, polyline, text } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox, fittedText, raised } from '../sketch.ts';
import { breakerSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	ratingA: amount('Rating', 'A', 60, { max: 2000 }),
	ratedV: optionalAmount('Usable up to', 'V', { max: 1000, whenEmpty: 'not known' }),
	breakingA: optionalAmount('Breaking capacity', 'A', { max: 200_000, whenEmpty: 'not known' }),
	madeFor: choice('Made for', 'not-known', {
		'not-known': 'not known',
		dc: 'direct current',
		both: 'direct and alternating',
		ac: 'alternating current only'
	}),
	reset: choice('Reset', 'manual', { manual: 'by hand, trip-free', automatic: 'by itself' }),
	polarised: flag('Polarised', false, { hint: 'marked for current in one direction only' }),
	thread: thread('Stud thread', '1/4'),
	...siteFields()
});

const BOX = centredBox(88, 48);

export const circuitBreaker = definePart({
	kind: 'circuit-breaker',
	name: 'Circuit breaker',
	help: 'Opens by itself on overcurrent and can be closed again; also switches a circuit off for work.',
	group: 'protection',
	letter: 'F',
	params,
	terminals: (breaker) => [
		stud('in', 'line', { x: -31, y: 0 }, 'west', { thread: breaker.thread, ratedA: breaker.ratingA, maxTerminals: 2 }),
		stud('out', 'load', { x: 31, y: 0 }, 'east', { thread: breaker.thread, ratedA: breaker.ratingA, maxTerminals: 2 })
	],
	links: (breaker) => [
		protectiveLink('breaker', ['in', 'out'], {
			kind: 'breaker',
			ratingA: breaker.ratingA,
			family: null,
			ratedV: breaker.ratedV,
			breakingA: breaker.breakingA,
			polarised: breaker.polarised,
			resetsItself: breaker.reset === 'automatic'
		})
	],
	outline: (breaker) => [
		body(BOX, 4),
		raised(-19, -18, 38, 36, 3),
		block(0, -7, 22, 13, { fill: 'case', stroke: 'case-edge', width: 0.5, r: 2 }),
		// The lever: yellow on many, here only a bar, so that it needs no colour.
		block(0, -7, 18, 4.5, { fill: 'case-edge', r: 2 }),
		fittedText(0, 4.5, decimalText(breaker.ratingA), 8, 32, { bold: true }),
		...breakerSymbol(0, 13, 18),
		// Current may pass in one direction only: from line to load.
		...(breaker.polarised
			? [
					text(-31, -18, '+', 8, { fill: 'muted', upright: true }),
					polyline(
						[
							{ x: 28, y: -21 },
							{ x: 33, y: -18 },
							{ x: 28, y: -15 }
						],
						{ stroke: 'muted', width: 0.8 }
					)
				]
			: [])
	],
	box: () => BOX,
	summary: ({ ratingA, reset, polarised }) =>
		[ampsText(ratingA), ...(polarised ? ['polarised'] : []), ...(reset === 'automatic' ? ['resets itself'] : [])].join(', ')
});
