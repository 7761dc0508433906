import * as z from 'zod';
import { ampsText } from '#core/units';
import { definePart } from '../define.ts';
import { amount, thread } from '../fields.ts';
import { line, rect } from '#core/graphics';
import { siteFields } from '../site.ts';
import { body, metal, raised } from '../sketch.ts';
import { machineSymbol } from '../symbols.ts';
import { stud } from '../terminals.ts';

const params = z.strictObject({
	crankingA: amount('Cranking current', 'A', 400, { max: 3000 }),
	thread: thread('Stud thread', 'M8'),
	...siteFields()
});

const BOX = { minX: -110, minY: -50, maxX: 110, maxY: 50 };

export const starterMotor = definePart({
	kind: 'starter-motor',
	name: 'Starter motor',
	help: 'Cranks the engine for seconds at hundreds of amps. Mark its conductors as cranking: they may go without a fuse, branches off them may not.',
	group: 'loads',
	letter: 'M',
	symbol: 'motor',
	params,
	terminals: (motor) => [
		stud('pos', 'B+', { x: -60, y: -30 }, 'north', { thread: motor.thread, role: 'positive', acceptsBlock: false }),
		stud('neg', 'B−', { x: 40, y: -30 }, 'north', { thread: motor.thread, role: 'negative', acceptsBlock: false })
	],
	links: (motor) => [
		{
			kind: 'load',
			id: 'motor',
			positive: 'pos',
			negative: 'neg',
			draw: { kind: 'current', amps: motor.crankingA },
			followsSource: null,
			reversible: false,
			critical: false
		}
	],
	outline: () => [
		// Solenoid above, motor below, pinion to the right.
		raised(-88, -50, 150, 42, 8),
		body({ minX: -110, minY: -8, maxX: 80, maxY: 50 }, 14),
		metal(80, 8, 30, 26, 2),
		...[12, 17, 22, 27].map((y) => line(84, y, 106, y, { stroke: 'metal-dark', width: 0.5 })),
		rect(-96, -8, 4, 58, { fill: 'case-raised', stroke: 'case-edge', width: 0.3 }),
		...machineSymbol(52, 21, 30, 'M')
	],
	nameplate: () => ({ minX: -84, minY: -2, maxX: 30, maxY: 46 }),
	box: () => BOX,
	summary: (motor) => ampsText(motor.crankingA)
});
