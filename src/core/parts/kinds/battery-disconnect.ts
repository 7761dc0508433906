import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { body, centredBox } from '../sketch.ts';
import { stud } from '../terminals.ts';

/** A closed battery switch of the 300 A class: common practice, no source. */
const CONTACT_OHM = 0.000_15;

const params = z.strictObject({
	ratedA: amount('Continuous rating', 'A', 300, { max: 3000 }),
	thread: thread('Stud thread', 'M10')
});

const BOX = centredBox(92, 84);

export const batteryDisconnect = definePart({
	kind: 'battery-disconnect',
	name: 'Battery disconnect',
	help: 'Isolates the bank by hand. It belongs in the positive lead, within reach, after the battery fuse.',
	group: 'protection',
	letter: 'Q',
	params,
	terminals: (disconnect) => [
		stud('in', 'in', { x: -32, y: 0 }, 'west', { thread: disconnect.thread, ratedA: disconnect.ratedA }),
		stud('out', 'out', { x: 32, y: 0 }, 'east', { thread: disconnect.thread, ratedA: disconnect.ratedA })
	],
	links: (disconnect) => [{ kind: 'switch', id: 'contact', between: ['in', 'out'], resistanceOhm: CONTACT_OHM, ratedA: disconnect.ratedA }],
	outline: () => [body(BOX, 8)],
	box: () => BOX,
	summary: (disconnect) => ampsText(disconnect.ratedA)
});
