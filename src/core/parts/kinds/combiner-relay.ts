import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { circle } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, centredBox, raised } from '../sketch.ts';
import { relaySymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

/** A closed relay contact of the 150 A class: common practice, no source. */
const CONTACT_OHM = 0.000_3;

const params = z.strictObject({
	ratedA: amount('Continuous rating', 'A', 150, { max: 1000 }),
	thread: thread('Stud thread', 'M8'),
	...siteFields()
});

const BOX = centredBox(104, 72);

export const combinerRelay = definePart({
	kind: 'combiner-relay',
	name: 'Combiner relay',
	help: 'Joins two banks while one of them is being charged. The conductor on either side has a battery at both ends.',
	group: 'charging',
	letter: 'Q',
	symbol: 'relay',
	params,
	terminals: (relay) => [
		stud('a', 'bank a', { x: -36, y: 0 }, 'west', { thread: relay.thread, role: 'positive', ratedA: relay.ratedA, maxTerminals: 2 }),
		stud('b', 'bank b', { x: 36, y: 0 }, 'east', { thread: relay.thread, role: 'positive', ratedA: relay.ratedA, maxTerminals: 2 })
	],
	links: (relay) => [{ kind: 'switch', id: 'contact', between: ['a', 'b'], resistanceOhm: CONTACT_OHM, ratedA: relay.ratedA }],
	outline: () => [body(BOX, 5), raised(-22, -30, 44, 60, 6), ...relaySymbol(0, -4, 30), circle(14, 24, 1.8, { fill: 'ok' })],
	box: () => BOX,
	summary: (relay) => ampsText(relay.ratedA)
});
