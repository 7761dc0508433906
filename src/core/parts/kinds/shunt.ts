import * as z from 'zod';
import { compactNumber } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { body, centredBox } from '../sketch.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	ratedA: amount('Rating', 'A', 500, { max: 5000 }),
	millivolt: amount('Voltage at rating', 'mV', 50, { max: 1000 }),
	thread: thread('Bolt thread', 'M10')
});

const BOX = centredBox(120, 46);

export const shunt = definePart({
	kind: 'shunt',
	name: 'Shunt',
	help: 'A calibrated resistor in the battery negative. Every return must land on its system side, or the monitor does not count it.',
	group: 'distribution',
	letter: 'B',
	params,
	terminals: (shunt) => [
		stud('battery', 'battery side', { x: -44, y: 0 }, 'west', {
			thread: shunt.thread,
			role: 'negative',
			maxTerminals: 2,
			ratedA: shunt.ratedA
		}),
		stud('system', 'system side', { x: 44, y: 0 }, 'east', {
			thread: shunt.thread,
			role: 'negative',
			maxTerminals: 2,
			ratedA: shunt.ratedA
		})
	],
	links: (shunt) => [
		{
			kind: 'shunt',
			id: 'shunt',
			between: ['battery', 'system'],
			resistanceOhm: shunt.millivolt / 1000 / shunt.ratedA,
			ratedA: shunt.ratedA
		}
	],
	outline: () => [body(BOX)],
	box: () => BOX,
	summary: (shunt) => `${compactNumber(shunt.ratedA)} A / ${compactNumber(shunt.millivolt)} mV`
});
