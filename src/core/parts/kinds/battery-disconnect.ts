import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { block, circle, text } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox, fixingHole } from '../sketch.ts';
import { disconnectorSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

/** A closed battery switch of the 300 A class: common practice, no source. */
const CONTACT_OHM = 0.000_15;

const params = z.strictObject({
	ratedA: amount('Continuous rating', 'A', 300, { max: 3000 }),
	thread: thread('Stud thread', 'M10'),
	...siteFields()
});

const BOX = centredBox(124, 96);

export const batteryDisconnect = definePart({
	kind: 'battery-disconnect',
	name: 'Battery disconnect',
	help: 'Isolates the bank by hand. It belongs in the positive lead, within reach, after the battery fuse.',
	group: 'protection',
	letter: 'Q',
	symbol: 'disconnector',
	params,
	terminals: (disconnect) => [
		stud('in', 'in', { x: -46, y: 0 }, 'west', { thread: disconnect.thread, ratedA: disconnect.ratedA }),
		stud('out', 'out', { x: 46, y: 0 }, 'east', { thread: disconnect.thread, ratedA: disconnect.ratedA })
	],
	links: (disconnect) => [{ kind: 'switch', id: 'contact', between: ['in', 'out'], resistanceOhm: CONTACT_OHM, ratedA: disconnect.ratedA }],
	outline: () => [
		body(BOX, 10),
		...[-1, 1].flatMap((x) => [-1, 1].map((y) => fixingHole(x * 53, y * 39))),
		circle(0, 0, 29, { fill: 'case-raised', stroke: 'case-edge', width: 0.6 }),
		circle(0, 0, 22, { fill: 'case', stroke: 'case-edge', width: 0.5 }),
		// The knob points across when closed.
		block(0, 0, 52, 11, { fill: 'positive', stroke: 'case-edge', width: 0.5, r: 4 }),
		block(22, 0, 5, 2, { fill: 'case' }),
		text(0, -38, 'ON', 7, { fill: 'muted', upright: true }),
		...disconnectorSymbol(0, 39, 20)
	],
	box: () => BOX,
	summary: (disconnect) => ampsText(disconnect.ratedA)
});
