import * as z from 'zod';
import { ampsText } from '#core/units';
import { protectiveLink } from '../copper.ts';
import { definePart } from '../define.ts';
import { amount, choice, flag, optionalAmount, thread } from '../fields.ts';
import { body, centredBox } from '../sketch.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	ratingA: amount('Rating', 'A', 60, { max: 2000 }),
	ratedV: optionalAmount('Usable up to', 'V', { max: 1000, whenEmpty: 'not known' }),
	breakingA: optionalAmount('Breaking capacity', 'A', { max: 200_000, whenEmpty: 'not known' }),
	reset: choice('Reset', 'manual', { manual: 'by hand, trip-free', automatic: 'by itself' }),
	polarised: flag('Polarised', false, { hint: 'marked for current in one direction only' }),
	thread: thread('Stud thread', '1/4')
});

const BOX = centredBox(76, 44);

export const circuitBreaker = definePart({
	kind: 'circuit-breaker',
	name: 'Circuit breaker',
	help: 'Opens by itself on overcurrent and can be closed again; also switches a circuit off for work.',
	group: 'protection',
	letter: 'F',
	params,
	terminals: (breaker) => [
		stud('in', 'line', { x: -26, y: 0 }, 'west', { thread: breaker.thread, ratedA: breaker.ratingA, maxTerminals: 2 }),
		stud('out', 'load', { x: 26, y: 0 }, 'east', { thread: breaker.thread, ratedA: breaker.ratingA, maxTerminals: 2 })
	],
	links: (breaker) => [
		protectiveLink('breaker', ['in', 'out'], {
			kind: 'breaker',
			ratingA: breaker.ratingA,
			family: null,
			ratedV: breaker.ratedV,
			breakingA: breaker.breakingA
		})
	],
	outline: () => [body(BOX)],
	box: () => BOX,
	summary: (breaker) => ampsText(breaker.ratingA)
});
