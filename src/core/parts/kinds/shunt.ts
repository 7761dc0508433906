import * as z from 'zod';
import { compactNumber } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { circle, line } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, fittedText, metal, raised } from '../sketch.ts';
import { shuntSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	ratedA: amount('Rating', 'A', 500, { max: 5000 }),
	millivolt: amount('Voltage at rating', 'mV', 50, { max: 1000 }),
	thread: thread('Bolt thread', 'M10'),
	...siteFields()
});

const BOX = { minX: -62, minY: -25, maxX: 62, maxY: 33 };

export const shunt = definePart({
	kind: 'shunt',
	name: 'Shunt',
	help: 'A calibrated resistor in the battery negative. Every return must land on its system side, or the monitor does not count it.',
	group: 'distribution',
	letter: 'B',
	params,
	terminals: (shunt) => [
		stud('battery', 'battery side', { x: -42, y: 0 }, 'west', {
			thread: shunt.thread,
			role: 'negative',
			maxTerminals: 2,
			ratedA: shunt.ratedA,
			print: { text: 'BAT', at: { x: -36, y: 26 } }
		}),
		stud('system', 'system side', { x: 42, y: 0 }, 'east', {
			thread: shunt.thread,
			role: 'negative',
			maxTerminals: 2,
			ratedA: shunt.ratedA,
			print: { text: 'SYS', at: { x: 37, y: 26 } }
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
	outline: (shunt) => [
		body(BOX, 3),
		metal(-58, -19, 36, 38),
		metal(22, -19, 36, 38),
		// Manganin strips, soldered into slots of the end blocks.
		...[-13, -6.5, 0, 6.5, 13].map((y) => line(-24, y, 24, y, { stroke: 'metal-dark', width: 2.4 })),
		...[-27, 27].map((x) => circle(x, 13, 3, { fill: 'case-raised', stroke: 'metal-dark', width: 0.4 })),
		raised(-19, -9, 38, 18, 2),
		fittedText(0, 0, `${compactNumber(shunt.ratedA)} A`, 8, 34, { bold: true }),
		...shuntSymbol(0, 25, 20)
	],
	box: () => BOX,
	summary: (shunt) => `${compactNumber(shunt.ratedA)} A / ${compactNumber(shunt.millivolt)} mV`
});
